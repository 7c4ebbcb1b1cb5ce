export * from "./lifeDistribution.js";
export * from "./lifeSpread.js";
