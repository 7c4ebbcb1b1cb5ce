export { changedKitchen } from "./changedKitchen.js";
export { type ImproveStep, improve, improving } from "./improve.js";
export {
  type Change,
  changeSchema,
  type Improvement,
  type Improvements,
  improvementSchema,
  improvementsSchema,
} from "./improvement.js";
export { nextToNothing } from "./nextToNothing.js";
