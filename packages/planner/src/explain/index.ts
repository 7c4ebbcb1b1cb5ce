export * from "./choiceOfPlan.js";
export * from "./explain.js";
export type { Neighbour, Neighbourhood } from "./neighbourhood.js";
export * from "./reason.js";
