export type { HappenedContext, ReadAccount } from "./accountRead.js";
export * from "./carriedOn.js";
export { type CarryOnRequest, carryOn } from "./carryOn.js";
export * from "./happened.js";
export type { PreviousRequest } from "./previous.js";
export { readHappened } from "./readHappened.js";
