export * from "./planAgain.js";
