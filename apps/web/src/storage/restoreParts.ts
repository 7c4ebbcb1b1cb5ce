import { ventSettings, wrapIds } from "@keepwright/planner";
import type { Correction, Corrections } from "../state/corrections.js";
import { civilDayFits } from "../state/daysAway.js";
import { amountUnits, type EnteredAmount, mostGrams } from "../state/enteredAmount.js";
import { leftOutAlways, type Meant } from "../state/meant.js";
import type { Lying, PlannerState } from "../state/plannerState.js";
import {
  type At,
  type Check,
  choice,
  flag,
  isRecord,
  item,
  number,
  someOf,
  text,
  unusable,
  within,
} from "./check.js";

const ripenesses = ["unripe", "turning", "ripe", "very ripe"] as const;
/** A key is a line of the haul: nearly always short, but a whole pasted text where it was one line. */
const longestKey = 1_000_000;
const mostDays = 60;

/** The entries of a record whose values can be used. */
function entries<Value>(
  value: unknown,
  at: At,
  check: (each: unknown, at: At, key: string) => Value | undefined,
) {
  if (value === undefined) return {};
  if (!isRecord(value)) {
    unusable(value, at, { want: "group" });
    return {};
  }
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => {
      const usable = check(each, within(at, JSON.stringify(key)), key);
      return usable === undefined ? [] : [[key, usable] as const];
    }),
  );
}

const mass = number(0, mostGrams, { above: true });
const amount: Check<EnteredAmount> = (value, at) => {
  if (!isRecord(value)) return unusable(value, at, { want: "group" });
  const entered = mass(value.value, within(at, "value"));
  const unit = choice(amountUnits)(value.unit, within(at, "unit"));
  return entered !== undefined && unit !== undefined ? { value: entered, unit } : undefined;
};
/** Until version 2 amounts were kept in grams alone. */
const grams: Check<EnteredAmount> = (value, at) => {
  const entered = mass(value, at);
  return entered === undefined ? undefined : { value: entered, unit: "g" };
};

const kindCheck =
  (kinds: ReadonlySet<string>): Check<string> =>
  (value, at) =>
    typeof value === "string" && kinds.has(value) ? value : unusable(value, at, { want: "known kind" });

/** What words mean to the person. */
export const restoreMeant = (value: unknown, at: At, kinds: ReadonlySet<string>): Meant =>
  entries(value, at, (each, own) => (each === leftOutAlways ? each : kindCheck(kinds)(each, own)));

function correctionCheck(kinds: ReadonlySet<string>): Check<Correction> {
  const kind = kindCheck(kinds);
  const fields = {
    commodity: kind,
    amount,
    ripeness: choice(ripenesses),
    form: choice(["whole", "cut"] as const),
    tops: flag,
    washed: flag,
    extraDays: number(0, mostDays, { whole: true }),
    leftOut: flag,
  };
  return (value, at) => {
    if (!isRecord(value)) return unusable(value, at, { want: "group" });
    const { grams: old, ...given } = value;
    const usable = someOf<Correction>(given, at, fields);
    // Its other figures were for a kind that is not known any more.
    if (given.commodity !== undefined && usable.commodity === undefined) return undefined;
    const inGrams =
      old === undefined || given.amount !== undefined ? undefined : grams(old, within(at, "grams"));
    return { ...usable, ...(inGrams && { amount: inGrams }) };
  };
}

export const restoreCorrections = (value: unknown, at: At, kinds: ReadonlySet<string>): Corrections =>
  entries(value, at, correctionCheck(kinds));

const lying: Check<Lying> = (value, at) => {
  if (value === "as planned") return value;
  if (!isRecord(value)) return unusable(value, at, { want: "group" });
  const place = text(longestKey)(value.place, within(at, "place"));
  const wrap = choice(wrapIds)(value.wrap, within(at, "wrap"));
  return place !== undefined && wrap !== undefined ? { place, wrap } : undefined;
};

/** Where the person said lots lie. */
export const restoreLying = (value: unknown, at: At): Readonly<Record<string, Lying>> =>
  entries(value, at, lying);

/** How vents stand as the person has it. */
export const restoreVents = (value: unknown, at: At): PlannerState["vents"] =>
  entries(value, at, choice(ventSettings));

/** Days without anybody at home. */
export const restoreDays = (value: unknown, at: At): readonly string[] =>
  restoreWords(value, at).filter(
    (day, index) => civilDayFits(day) || unusable(day, item(at, index), { want: "day" }),
  );
/** The day a list came home. */
export const fromDay: Check<string> = (value, at) =>
  typeof value === "string" && (value === "today" || civilDayFits(value))
    ? value
    : unusable(value, at, { want: "day" });

/** The list as it stood until some days. */
export function restoreBefore(value: unknown, at: At): PlannerState["before"] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    unusable(value, at, { want: "list" });
    return [];
  }
  return value.flatMap((each, index) => {
    const own = item(at, index);
    if (!isRecord(each)) return unusable(each, own, { want: "group" }) ?? [];
    const { day, text: words } = each;
    const dayFits = typeof day === "string" && civilDayFits(day);
    if (!dayFits) unusable(day, within(own, "day"), { want: "day" });
    if (typeof words !== "string") unusable(words, within(own, "text"), { want: "text", most: longestKey });
    return dayFits && typeof words === "string" ? [{ day, text: words }] : [];
  });
}

/** Texts of a list. */
export function restoreWords(value: unknown, at: At): readonly string[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) {
    unusable(value, at, { want: "list" });
    return [];
  }
  return value.filter((each, index): each is string => {
    if (typeof each !== "string") unusable(each, item(at, index), { want: "text", most: longestKey });
    return typeof each === "string";
  });
}
