export * from "./actionFactor.js";
export * from "./concentration.js";
export * from "./injuryRate.js";
export * from "./production.js";
export * from "./sensitivity.js";
