export { improve } from "./improve.js";
export * from "./improvement.js";
export { nextToNothing } from "./nextToNothing.js";
