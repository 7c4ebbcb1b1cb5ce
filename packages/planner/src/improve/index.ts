export { improve, nextToNothing } from "./improve.js";
export * from "./improvement.js";
