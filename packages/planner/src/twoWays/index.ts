export * from "./layTwoWays.js";
export * from "./twoWays.js";
