export * from "./carriedOn.js";
export { type CarryOnRequest, carryOn } from "./carryOn.js";
export * from "./happened.js";
export type { PreviousRequest } from "./previous.js";
export { type HappenedContext, type ReadAccount, readHappened } from "./readHappened.js";
