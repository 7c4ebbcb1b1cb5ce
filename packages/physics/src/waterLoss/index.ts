export * from "./cutSurface.js";
export * from "./seriesConductance.js";
export * from "./surfaceWaterActivity.js";
export * from "./transpirationRate.js";
export * from "./transpirationUnits.js";
