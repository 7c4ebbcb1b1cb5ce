export * from "./carbonLoss.js";
export * from "./interpolateLogarithm.js";
export * from "./respirationRate.js";
