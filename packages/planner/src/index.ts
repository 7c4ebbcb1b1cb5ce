export * from "./alone/index.js";
export * from "./check/index.js";
export * from "./explain/index.js";
export * from "./problem/index.js";
export * from "./reading/index.js";
export * from "./rules/index.js";
export * from "./schedule/index.js";
export * from "./search/index.js";
