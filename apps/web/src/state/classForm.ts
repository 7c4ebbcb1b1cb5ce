import {
  type ClassRegion,
  type ClassRequest,
  type ClassTopic,
  classTopics,
  type PrintSize,
} from "@keepwright/handout";
import { kitchenOf } from "./kitchenOf.js";
import type { LanguageKey } from "./language.js";
import type { PlannerState } from "./plannerState.js";

/** Bounds of what may be asked for, as the command line has them: minutes of a class, and kinds. */
export const classMinutes = { least: 10, most: 240 } as const;
export const classKinds = { least: 1, most: 24 } as const;

/** What is said of a class on its screen. */
export interface ClassForm {
  /** Kinds that are named, or those in season. */
  readonly about: "list" | "season";
  /** Names of kinds, one a line. */
  readonly kinds: string;
  /** 1 January … 12 December. */
  readonly month: number;
  readonly region: ClassRegion;
  /** How many kinds of the season. */
  readonly count: number;
  /** Length of the class [min]. */
  readonly minutes: number;
  readonly topics: readonly ClassTopic[];
  readonly large: boolean;
}

/** Countries south of the equator for the most part (ISO 3166 codes; from memory). */
const southern = "AO AR AU BO BR BW CL FJ ID LS MG MW MZ NA NZ PE PG PY RW SZ TZ UY ZA ZM ZW".split(" ");

/** The half of the earth that a tag's country lies in; the northern, where most people live, for a tag of none. */
export const halfOf = (tag: string): ClassRegion =>
  southern.includes(new Intl.Locale(tag).region ?? "") ? "southern" : "northern";

/** A class of which nothing has been said yet: an hour about everything, as the command line has it. Declared preferences, no source. */
export const usualClass = (kinds: string, day: string, tag: string): ClassForm => ({
  about: "list",
  kinds,
  month: Number(day.slice(5, 7)),
  region: halfOf(tag),
  count: 8,
  minutes: 60,
  topics: classTopics,
  large: false,
});

/** Topics with one put in or taken out; in the order in which they are named. */
export const withTopic = (
  topics: readonly ClassTopic[],
  topic: ClassTopic,
  wanted: boolean,
): readonly ClassTopic[] => classTopics.filter((one) => (one === topic ? wanted : topics.includes(one)));

/** What is asked of the maker of kits, for the kitchen and the people that are set on the page. */
export function classRequest(
  state: PlannerState,
  { language, tag }: { readonly language: LanguageKey; readonly tag: string },
  form: ClassForm,
): ClassRequest {
  const { region: whose } = new Intl.Locale(tag);
  const units = typeof state.units === "string" ? state.units : state.units.mass;
  const items = form.kinds
    .split(/[\n,;]/u)
    .map((name) => name.trim())
    .filter((name) => name !== "");
  const { month, region, count } = form;
  const print: PrintSize = form.large ? "large" : "ordinary";
  return {
    version: 1,
    audience: {
      language,
      print,
      paper: units === "us" ? "letter" : "a4",
      units,
      ...(whose && { region: whose }),
    },
    ...(form.about === "list" ? { items } : { season: { month, region, kinds: count } }),
    household: {
      kitchen: kitchenOf(state),
      people: state.people,
      portions: state.portions,
      days: state.days,
    },
    minutes: form.minutes,
    topics: form.topics,
    seed: 1,
  };
}
