export type { Evaluation } from "./evaluate.js";
export * from "./evaluateChoice.js";
export * from "./planHaul.js";
export { agreeingPreparation } from "./plannedPreparation.js";
export type { Progress } from "./searchPlan.js";
export * from "./unsorted.js";
