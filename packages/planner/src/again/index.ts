export * from "./carryOnAgain.js";
export * from "./planAgain.js";
export * from "./takeInHand.js";
