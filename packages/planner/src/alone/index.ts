export { choosing } from "./bestWay.js";
export * from "./keptAlone.js";
