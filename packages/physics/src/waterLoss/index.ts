export * from "./cutSurface.js";
export * from "./surfaceWaterActivity.js";
export * from "./transpirationRate.js";
