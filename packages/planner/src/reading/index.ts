export { readHaul } from "./readHaul.js";
export * from "./reading.js";
