export * from "./proof.js";
export * from "./provePlan.js";
