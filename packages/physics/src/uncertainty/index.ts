export * from "./lifeDistribution.js";
export * from "./lifeSpread.js";
export * from "./publishedTime.js";
