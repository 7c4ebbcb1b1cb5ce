import haul from "virtual:worked-example";
import type { PlannerState } from "./plannerState.js";

/** The example opened on a first visit: an invented Saturday at the market for a flat of four. */
export const workedExample: PlannerState = {
  version: 1,
  text: haul,
  corrections: {},
  kitchen: "ordinary",
  people: 4,
  days: 10,
  units: "metric",
};
