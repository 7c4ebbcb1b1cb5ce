import hauls from "virtual:worked-example";
import { unitsOf } from "@keepwright/handout";
import { type LanguageKey, languageKeys } from "./language.js";
import {
  firstKitchen,
  hasOnlyText,
  isExample,
  type PlannerChange,
  type PlannerState,
  usualPortions,
} from "./plannerState.js";

/** The example opened on a first visit, in a language of the page: an invented Saturday at the market for an invented flat of four. */
export const workedExample = (language: LanguageKey): PlannerState => ({
  version: 5,
  text: hauls[language],
  corrections: {},
  meant: {},
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
  classForm: {},
});

/** Whether what is on the page is still the example in one of its languages, untouched. */
export const isWorkedExample = (state: PlannerState): boolean =>
  languageKeys.some((language) => isExample(state, workedExample(language)));

/** A change of language with what it opens anew: the example, where nobody has touched it. */
export function withExample(
  change: PlannerChange,
  state: PlannerState,
  language: LanguageKey,
): PlannerChange {
  if (change.change !== "language" || !isWorkedExample(state) || !hasOnlyText(state)) return change;
  const { text } = workedExample(language);
  return text === state.text ? change : { ...change, instead: { of: state.text, text } };
}
