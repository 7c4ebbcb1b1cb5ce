import type { UnitSystem } from "../words/amounts.js";
import type { LanguageName } from "../words/languages.js";

/** What a class may be about. Cautions are in every class and no topic of their own. */
export const classTopics = [
  "places",
  "apart",
  "ripening",
  "lasting",
  "signs",
  "saving",
  "buying",
  "myths",
] as const;
export type ClassTopic = (typeof classTopics)[number];

export const printSizes = ["ordinary", "large"] as const;
export type PrintSize = (typeof printSizes)[number];

/** Halves of the earth, for harvest months. */
export const classRegions = ["northern", "southern"] as const;
export type ClassRegion = (typeof classRegions)[number];

/** Who sits there: language, size of print, paper and units. */
export interface ClassAudience {
  readonly language: LanguageName;
  readonly print: PrintSize;
  readonly paper: "a4" | "letter";
  readonly units: UnitSystem;
  /** Whose names of kinds, dates and numbers: ISO 3166 code, or 419 for Latin America; absent: as usual with the units. */
  readonly region?: string | undefined;
}

/** Kinds that are harvested in a month. Harvest months in the catalogue are common practice: nothing published was found. */
export interface ClassSeason {
  /** 1 January … 12 December. */
  readonly month: number;
  readonly region: ClassRegion;
  /** How many kinds, 1 to 24. */
  readonly kinds: number;
}

/** The household of the worked example. Invented, unless the person says otherwise. */
export interface ClassHousehold {
  /** What came home, in words; absent: what the class is about, in usual amounts. */
  readonly haul?: string | undefined;
  /** What they would like to buy, in words, for the exercise; absent: twice the usual amounts. */
  readonly list?: string | undefined;
  /** Key of an ordinary kitchen, or a kitchen as data. */
  readonly kitchen: unknown;
  readonly people: number;
  readonly portions: number;
  /** d planned for. */
  readonly days: number;
}

/** What a class kit is asked to be, checked and with everything that was left out filled in. */
export interface ClassRequest {
  readonly version: 1;
  readonly title?: string | undefined;
  readonly audience: ClassAudience;
  /** Names of kinds in any language; given instead of a season. */
  readonly items?: readonly string[] | undefined;
  readonly season?: ClassSeason | undefined;
  readonly household: ClassHousehold;
  /** Length of the class [min]. */
  readonly minutes: number;
  readonly topics: readonly ClassTopic[];
  /** Chooses the questions, their order and, with a season, the kinds. */
  readonly seed: number;
}
