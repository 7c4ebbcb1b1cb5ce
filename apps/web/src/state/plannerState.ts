import type { WrapId } from "@keepwright/catalogue";
import type { Units } from "@keepwright/handout";
import type { Kitchen, KitchenAnswers, VentSetting } from "@keepwright/planner";
import type { ClassForm } from "./classForm.js";
import type { Correction, Corrections } from "./corrections.js";
import type { LanguageChoice } from "./language.js";
import type { Meant, WordMeant } from "./meant.js";
import type { RegionChoice } from "./region.js";

/** A kitchen the person described; its key begins with "own-". */
export interface OwnKitchen {
  readonly key: string;
  /** The last that could be planned with. */
  readonly kitchen: Kitchen;
  /** What the person said of it, if it was described by answering questions; an answer that will not do stays here. */
  readonly answers?: KitchenAnswers;
}

/** Where the person says a lot lies, and how it is wrapped; or that all of it lies and moves as the plan has it. */
export type Lying = { readonly place: string; readonly wrap: WrapId } | "as planned";

/** Everything the person entered. The plan is computed from it and is not kept. */
export interface PlannerState {
  readonly version: 5;
  readonly text: string;
  readonly corrections: Corrections;
  /** Answers that hold for every list. */
  readonly meant: Meant;
  /** Key of an ordinary kitchen, or of one of `kitchens`. */
  readonly kitchen: string;
  readonly kitchens: readonly OwnKitchen[];
  readonly people: number;
  readonly days: number;
  /** Portions of fruit and vegetables a person eats a day. */
  readonly portions: number;
  /** Civil days (YYYY-MM-DD) on which nobody eats at home. */
  readonly away: readonly string[];
  /** Temperatures and masses each in their own. */
  readonly units: Units;
  readonly language: LanguageChoice;
  /** Whose dates and numbers. */
  readonly region: RegionChoice;
  /** Tasks ticked off, by their keys. */
  readonly done: readonly string[];
  /** As the person has it, by the key of the line. */
  readonly lying: Readonly<Record<string, Lying>>;
  /** How vents stand as the person has it, by their places. */
  readonly vents: Readonly<Record<string, VentSetting>>;
  /** Where the person would have a thing lie although the plan puts it elsewhere, by the key of the line. */
  readonly chosen: Readonly<Record<string, Lying>>;
  /** Civil day on which the list came home, and its plan begins; "today" where that is whatever day it is. */
  readonly from: string;
  /** On each later day on which the list was changed: how it stood until then. What is in it came home before that day. */
  readonly before: readonly ListBefore[];
  /** What of the days that have passed was not done: keys of meals and moves. */
  readonly missed: readonly string[];
  /** What was said of a class, beside what is usual. */
  readonly classForm: Partial<ClassForm>;
}

/** The list as it stood until a civil day. */
export interface ListBefore {
  readonly day: string;
  readonly text: string;
}

export type PlannerChange =
  /** `on` is the civil day on which it is written. */
  | { readonly change: "text"; readonly text: string; readonly on?: string }
  /** `meant` is what the answer says of a word in every list. */
  | {
      readonly change: "correct";
      readonly key: string;
      readonly correction: Correction;
      readonly meant?: WordMeant | undefined;
    }
  /** `word` is asked about again. */
  | { readonly change: "as read"; readonly key: string; readonly word?: string | undefined }
  | { readonly change: "forget word"; readonly word: string }
  | { readonly change: "kitchen"; readonly kitchen: string }
  /** Adds a kitchen or replaces the one of the same key, and chooses it. */
  | { readonly change: "own kitchen"; readonly own: OwnKitchen }
  | { readonly change: "forget kitchen"; readonly key: string }
  | { readonly change: "people"; readonly people: number }
  | { readonly change: "days"; readonly days: number }
  | { readonly change: "portions"; readonly portions: number }
  | { readonly change: "away"; readonly away: readonly string[] }
  | { readonly change: "units"; readonly units: PlannerState["units"] }
  /** `instead` is the example nobody has touched, in the other language. */
  | {
      readonly change: "language";
      readonly language: LanguageChoice;
      readonly instead?: { readonly of: string; readonly text: string };
    }
  | { readonly change: "region"; readonly region: RegionChoice }
  | { readonly change: "done"; readonly tasks: readonly string[]; readonly done: boolean }
  | { readonly change: "lying"; readonly key: string; readonly at: Lying | undefined }
  | {
      readonly change: "all lying";
      readonly lying: PlannerState["lying"];
      readonly vents: PlannerState["vents"];
    }
  | { readonly change: "vent"; readonly place: string; readonly setting: VentSetting | undefined }
  | { readonly change: "chosen"; readonly key: string; readonly at: Lying | undefined }
  /** All of the list came home on that civil day. */
  | { readonly change: "from"; readonly from: string }
  | { readonly change: "missed"; readonly keys: readonly string[]; readonly missed: boolean }
  | { readonly change: "class"; readonly form: Partial<ClassForm> }
  /** Takes everything off the list. */
  | { readonly change: "clear" }
  | { readonly change: "open example"; readonly example: PlannerState }
  /** Everything by what stands in a file, or by what this device had kept besides. */
  | { readonly change: "replace"; readonly state: PlannerState; readonly how: "file" | "recovered" };

/** The ordinary kitchen of a first visit. */
export const firstKitchen = "ordinary";
export const peopleRange = { least: 1, most: 12 } as const;
export const dayRange = { least: 3, most: 21 } as const;
export const portionRange = { least: 1, most: 10 } as const;
/** Portions a person eats a day: WHO's 400 g a day as five portions of 80 g (from memory). */
export const usualPortions = 5;

function withoutKey<Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
): Readonly<Record<string, Value>> {
  const { [key]: _, ...rest } = record;
  return rest;
}

const withEntry = <Value>(
  record: Readonly<Record<string, Value>>,
  key: string,
  value: Value | undefined,
): Readonly<Record<string, Value>> =>
  value === undefined ? withoutKey(record, key) : { ...record, [key]: value };

const withKitchen = (state: PlannerState, own: OwnKitchen): PlannerState => {
  const known = state.kitchens.some(({ key }) => key === own.key);
  const kitchens = known
    ? state.kitchens.map((each) => (each.key === own.key ? own : each))
    : [...state.kitchens, own];
  return { ...state, kitchens, kitchen: own.key };
};

const withoutKitchen = (state: PlannerState, key: string): PlannerState => ({
  ...state,
  kitchens: state.kitchens.filter((each) => each.key !== key),
  kitchen: state.kitchen === key ? firstKitchen : state.kitchen,
});

const ticked = (done: readonly string[], tasks: readonly string[], now: boolean): readonly string[] =>
  now ? [...new Set([...done, ...tasks])] : done.filter((each) => !tasks.includes(each));

const noDays = { from: "today", before: [], missed: [] } as const;
/** Days on which the list was changed that are kept: more than a plan is carried on for. */
const mostBefore = 30;

/** A list begins on the day its first words are written; on each later day it is kept as it stood until then. */
function dated(
  state: PlannerState,
  text: string,
  on: string | undefined,
): Partial<Pick<PlannerState, keyof typeof noDays>> {
  if (on === undefined) return {};
  if (text.trim() === "") return noDays;
  if (state.from === "today" || state.text.trim() === "") return { ...noDays, from: on };
  const last = state.before.at(-1)?.day ?? state.from;
  if (on <= last) return {};
  return { before: [...state.before, { day: on, text: state.text }].slice(-mostBefore) };
}

/**
 * Words in an empty box begin a list anew: what was answered, ticked and put of the one before is not of this one, though its lines may be worded
 * the same.
 */
function written(state: PlannerState, text: string, on: string | undefined): PlannerState {
  const anew = state.text.trim() === "" && text.trim() !== "";
  return { ...(anew ? cleared(state) : state), text, ...dated(state, text, on) };
}

type Answer = Extract<PlannerChange, { readonly change: "correct" | "as read" | "forget word" }>;

/** What was said of a line, or of a word wherever it stands; or taken back. */
function answered(state: PlannerState, change: Answer): PlannerState {
  if (change.change === "forget word") return { ...state, meant: withoutKey(state.meant, change.word) };
  const { key } = change;
  if (change.change === "as read") {
    const meant = change.word === undefined ? state.meant : withoutKey(state.meant, change.word);
    return { ...state, corrections: withoutKey(state.corrections, key), meant };
  }
  const correction = { ...state.corrections[key], ...change.correction };
  const meant = change.meant ? { ...state.meant, [change.meant.word]: change.meant.means } : state.meant;
  return { ...state, corrections: { ...state.corrections, [key]: correction }, meant };
}

/** Corrections of lines that are no longer in the text stay, so that undoing a deletion in the text brings them back. */
export function plannerReducer(state: PlannerState, change: PlannerChange): PlannerState {
  switch (change.change) {
    case "text":
      return written(state, change.text, change.on);
    case "correct":
    case "as read":
    case "forget word":
      return answered(state, change);
    case "kitchen":
      return { ...state, kitchen: change.kitchen };
    case "people":
      return { ...state, people: change.people };
    case "days":
      return { ...state, days: change.days };
    case "own kitchen":
      return withKitchen(state, change.own);
    case "forget kitchen":
      return withoutKitchen(state, change.key);
    case "portions":
      return { ...state, portions: change.portions };
    case "away":
      return { ...state, away: [...new Set(change.away)].sort() };
    case "units":
      return { ...state, units: change.units };
    case "language":
      return spokenIn(state, change.language, change.instead);
    case "region":
      return { ...state, region: change.region };
    case "done":
      return { ...state, done: ticked(state.done, change.tasks, change.done) };
    case "lying":
      return { ...state, lying: withEntry(state.lying, change.key, change.at) };
    case "chosen":
      return { ...state, chosen: withEntry(state.chosen, change.key, change.at) };
    case "all lying":
      return { ...state, lying: change.lying, vents: change.vents };
    case "vent":
      return { ...state, vents: withEntry(state.vents, change.place, change.setting) };
    case "from":
      return { ...state, ...noDays, from: change.from, done: [] };
    case "missed":
      return { ...state, missed: ticked(state.missed, change.keys, change.missed) };
    case "class":
      return { ...state, classForm: { ...state.classForm, ...change.form } };
    case "clear":
      return cleared(state);
    case "open example":
      return opened(change.example, state);
    case "replace":
      return change.state;
  }
}

/** Nothing typed yet. The kitchen, the people and the units stay: they do not change from one haul to the next. */
export const cleared = (state: PlannerState): PlannerState => ({
  ...state,
  text: "",
  corrections: {},
  done: [],
  lying: {},
  vents: {},
  chosen: {},
  ...noDays,
});

/** The example's haul and people, in the kitchen, units and language already chosen. */
export const opened = (example: PlannerState, state: PlannerState): PlannerState => ({
  ...cleared(state),
  text: example.text,
  corrections: example.corrections,
  people: example.people,
  days: example.days,
});

/** An example that was touched in the meantime keeps its words. */
function spokenIn(
  state: PlannerState,
  language: LanguageChoice,
  instead: { readonly of: string; readonly text: string } | undefined,
): PlannerState {
  const text = instead && instead.of === state.text && hasOnlyText(state) ? instead.text : state.text;
  return { ...state, language, text };
}

/** Whether nothing was corrected, ticked or put anywhere: what is remembered by the words of a line. */
export const hasOnlyText = ({ corrections, lying, chosen, done, missed }: PlannerState): boolean =>
  [corrections, lying, chosen].every((each) => Object.keys(each).length === 0) &&
  done.length + missed.length === 0;

/** Whether what is on the page is still the example, untouched. */
export const isExample = (state: PlannerState, example: PlannerState): boolean =>
  state.text === example.text && Object.keys(state.corrections).length === 0;
