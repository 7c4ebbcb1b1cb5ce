export * from "./beckerFricke.js";
export * from "./carbonLoss.js";
export * from "./interpolateLogarithm.js";
export * from "./q10.js";
export * from "./respirationModels.js";
export * from "./respirationRate.js";
