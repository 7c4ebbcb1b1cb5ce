export * from "./planAgain.js";
export * from "./takeInHand.js";
