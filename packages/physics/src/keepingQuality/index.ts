export * from "./chilling.js";
export * from "./freezing.js";
export * from "./keepingQuality.js";
export * from "./senescenceRate.js";
