export { checkPlan } from "./checkPlan.js";
export type { PlanFault, PlanRule } from "./fault.js";
export type { CheckRequest } from "./subject.js";
