import type { Contradiction } from "@keepwright/planner";

/** What would be accepted where something was not; said in words by the page. */
export type Wanted =
  | { readonly want: "text"; readonly most: number }
  | { readonly want: "number" | "whole number"; readonly least: number; readonly most: number }
  | { readonly want: "choice"; readonly choices: readonly string[] }
  | { readonly want: "yes or no" | "day" | "group" | "list" | "nothing" | "known kind" | "known kitchen" }
  | { readonly want: "length"; readonly least: number; readonly most: number }
  /** Of the right shape, but its parts contradict one another. */
  | ({ readonly want: "agreement" } & Pick<Contradiction, "because" | "values">);

/** Something that could not be used: where it stood, what stood there, and what would have been accepted. */
export interface Unused {
  /** As in "kitchens[1].kitchen.places[2].litres", counted from 1. */
  readonly field: string;
  readonly value: string;
  readonly wanted: Wanted;
}

/** Where something stands, and who hears of it when it cannot be used. */
export interface At {
  readonly field: string;
  readonly report: (unused: Unused) => void;
}

/** Gives the value where it can be used; else reports why not and gives nothing. */
export type Check<Value> = (value: unknown, at: At) => Value | undefined;

const longestShown = 80;

/** A value in one line, shortened. Never throws, whatever it is. */
export function shown(value: unknown): string {
  let text: string | undefined;
  try {
    text = JSON.stringify(value);
  } catch {
    text = undefined;
  }
  text ??= String(value);
  return text.length > longestShown ? `${text.slice(0, longestShown)}…` : text;
}

export const unusable = (value: unknown, { field, report }: At, wanted: Wanted): undefined => {
  report({ field, value: value === undefined ? "" : shown(value), wanted });
  return undefined;
};

export const within = (at: At, name: string): At => ({
  ...at,
  field: at.field === "" ? name : `${at.field}.${name}`,
});
export const item = (at: At, index: number): At => ({ ...at, field: `${at.field}[${index + 1}]` });

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Text of 1 to `most` UTF-16 units. */
export const text =
  (most: number): Check<string> =>
  (value, at) =>
    typeof value === "string" && value !== "" && value.length <= most
      ? value
      : unusable(value, at, { want: "text", most });

/** A number from `least` (or above it) to `most`. */
export const number =
  (least: number, most: number, { above = false, whole = false } = {}): Check<number> =>
  (value, at) => {
    const fits =
      typeof value === "number" &&
      (above ? value > least : value >= least) &&
      value <= most &&
      (!whole || Number.isInteger(value));
    return fits ? value : unusable(value, at, { want: whole ? "whole number" : "number", least, most });
  };

export const choice =
  <Choice extends string>(choices: readonly Choice[]): Check<Choice> =>
  (value, at) =>
    choices.find((each) => each === value) ?? unusable(value, at, { want: "choice", choices });

export const flag: Check<boolean> = (value, at) =>
  typeof value === "boolean" ? value : unusable(value, at, { want: "yes or no" });

/** A list of which every item can be used; else none of it. */
export const list =
  <Value>(check: Check<Value>, least: number, most: number): Check<Value[]> =>
  (value, at) => {
    if (!Array.isArray(value)) return unusable(value, at, { want: "list" });
    if (value.length < least || value.length > most)
      return unusable(value.length, at, { want: "length", least, most });
    const usable = value.map((each, index) => check(each, item(at, index)));
    return usable.some((each) => each === undefined) ? undefined : (usable as Value[]);
  };

type Fields = Readonly<Record<string, Check<unknown>>>;
interface MayLack {
  /** Fields that may be missing, and stay so. */
  readonly optional?: readonly string[];
  /** What missing fields are taken to be. */
  readonly usual?: Readonly<Record<string, unknown>>;
}

/** A group of fields that can all be used. A field that nobody knows is reported and left out; the others stand. */
export const group =
  <Value>(fields: Fields, { optional = [], usual = {} }: MayLack = {}): Check<Value> =>
  (value, at) => {
    if (!isRecord(value)) return unusable(value, at, { want: "group" });
    for (const key of Object.keys(value))
      if (!Object.hasOwn(fields, key)) unusable(value[key], within(at, key), { want: "nothing" });
    let usable = true;
    const known = Object.entries(fields).flatMap(([key, check]) => {
      const given = Object.hasOwn(value, key) && value[key] !== undefined ? value[key] : usual[key];
      if (given === undefined && optional.includes(key)) return [];
      const checked = check(given, within(at, key));
      usable &&= checked !== undefined;
      return [[key, checked] as const];
    });
    return usable ? (Object.fromEntries(known) as Value) : undefined;
  };

/** Those fields of a group that are there and can be used; each of the others is reported and left out. */
export function someOf<Value extends object>(
  value: unknown,
  at: At,
  fields: Fields,
): { readonly [field in keyof Value]?: Value[field] } {
  if (!isRecord(value)) {
    unusable(value, at, { want: "group" });
    return {};
  }
  for (const key of Object.keys(value))
    if (!Object.hasOwn(fields, key)) unusable(value[key], within(at, key), { want: "nothing" });
  const usable = Object.entries(fields).flatMap(([key, check]) => {
    if (!Object.hasOwn(value, key) || value[key] === undefined) return [];
    const checked = check(value[key], within(at, key));
    return checked === undefined ? [] : [[key, checked] as const];
  });
  return Object.fromEntries(usable) as { readonly [field in keyof Value]?: Value[field] };
}

/** The first check that accepts; what the last one says where none does. */
export const either =
  <Value>(first: Check<Value>, last: Check<Value>): Check<Value> =>
  (value, at) =>
    first(value, { ...at, report: () => undefined }) ?? last(value, at);
