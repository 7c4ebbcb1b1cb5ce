export { improve } from "./improve.js";
export {
  type Change,
  changeSchema,
  type Improvement,
  type Improvements,
  improvementSchema,
  improvementsSchema,
} from "./improvement.js";
export { nextToNothing } from "./nextToNothing.js";
