export * from "./choiceOfPlan.js";
export { explainLot, explainPlan } from "./explain.js";
export type * from "./reason.js";
