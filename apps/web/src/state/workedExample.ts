import haul from "virtual:worked-example";
import { firstKitchen, type PlannerState } from "./plannerState.js";

/** The example opened on a first visit: an invented Saturday at the market for a flat of four. */
export const workedExample: PlannerState = {
  version: 2,
  text: haul,
  corrections: {},
  kitchen: firstKitchen,
  kitchens: [],
  people: 4,
  days: 10,
  units: "metric",
  language: "device",
  done: [],
  lying: {},
};
