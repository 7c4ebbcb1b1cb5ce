import haul from "virtual:worked-example";
import { unitsOf } from "@keepwright/handout";
import { firstKitchen, type PlannerState, usualPortions } from "./plannerState.js";

/** The example opened on a first visit: an invented Saturday at the market for a flat of four. */
export const workedExample: PlannerState = {
  version: 3,
  text: haul,
  corrections: {},
  kitchen: firstKitchen,
  kitchens: [],
  people: 4,
  days: 10,
  portions: usualPortions,
  away: [],
  units: unitsOf("metric"),
  language: "device",
  region: "device",
  done: [],
  lying: {},
  vents: {},
  chosen: {},
};
