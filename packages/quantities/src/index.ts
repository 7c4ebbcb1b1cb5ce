export * from "./brand.js";
export * from "./calendarDate.js";
export * from "./keyedRandom.js";
export * from "./mass.js";
export * from "./normal.js";
export * from "./seededRandom.js";
export * from "./temperature.js";
export * from "./volume.js";
