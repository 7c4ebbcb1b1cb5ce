export { type NotKept, notKept } from "./notKept.js";
export { readHaul } from "./readHaul.js";
export * from "./reading.js";
export { type DecimalMark, soleNumber } from "./soleNumber.js";
