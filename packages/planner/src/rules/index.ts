export * from "./capacity.js";
export * from "./cautions.js";
export * from "./cutInRefrigerator.js";
export * from "./effort.js";
export * from "./portionsADay.js";
export * from "./smells.js";
export * from "./suitableWraps.js";
export * from "./weights.js";
