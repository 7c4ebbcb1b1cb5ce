import hauls from "virtual:worked-example";
import { unitsOf } from "@keepwright/handout";
import { type LanguageKey, languageKeys } from "./language.js";
import { firstKitchen, isExample, type PlannerState, usualPortions } from "./plannerState.js";

/** The example opened on a first visit, in a language of the page: an invented Saturday at the market for an invented flat of four. */
export const workedExample = (language: LanguageKey): PlannerState => ({
  version: 4,
  text: hauls[language],
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
  from: "today",
  before: [],
  missed: [],
});

/** Whether what is on the page is still the example in one of its languages, untouched. */
export const isWorkedExample = (state: PlannerState): boolean =>
  languageKeys.some((language) => isExample(state, workedExample(language)));
