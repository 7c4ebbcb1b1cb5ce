export * from "./simulate.js";
export * from "./simulation.js";
