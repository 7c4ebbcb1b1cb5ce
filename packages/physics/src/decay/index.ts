export * from "./decayRate.js";
