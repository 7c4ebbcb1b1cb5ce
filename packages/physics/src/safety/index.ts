export * from "./cutSafetyRate.js";
export * from "./limits.js";
