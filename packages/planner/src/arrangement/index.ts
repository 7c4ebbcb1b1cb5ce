export * from "./arrangement.js";
export * from "./arrangementOfPlan.js";
export { arrangementFrom } from "./checkArrangement.js";
export * from "./judgeArrangement.js";
export * from "./judgement.js";
export type { OneMove } from "./oneMove.js";
