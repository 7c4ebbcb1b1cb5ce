export * from "./eatingDays.js";
export * from "./partCosts.js";
export * from "./pricedCost.js";
export * from "./wishCosts.js";
