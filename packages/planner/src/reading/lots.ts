import type { Commodity } from "@keepwright/catalogue";
import type { Lot } from "../problem/lot.js";
import type { Amount } from "./amounts.js";
import type { Said } from "./parts.js";
import type { Assumption, Question } from "./reading.js";
import type { StateChange } from "./states.js";
import { type Weighed, weigh } from "./weigh.js";

/** A lot before it is placed in the text, or the reason why there is none. */
export interface DraftLot {
  readonly lot: Omit<Lot, "id" | "typed">;
  readonly sureOfAmount: number;
  readonly assumed: readonly Assumption[];
  readonly contradictory: boolean;
}
export type AmountFault = Extract<Question, { ask: "how much" }>;

const mostGrams = 200_000;
const mostPieces = 10_000;
/** Kinds in which green means unripe; in others (green apples, green grapes) it is only a colour. Common practice. */
const greenIsUnripe = new Set([
  "banana",
  "plantain",
  "mango",
  "papaya",
  "tomato",
  "cherry-tomato",
  "apricot",
  "peach",
  "nectarine",
  "guava",
]);
/** Two amounts for one lot agree when they differ by no more than this share. */
const agreement = 0.15;

function faultOf(
  amount: Amount | undefined,
  weighed: Weighed | "unknown unit",
  commodity: Commodity,
): AmountFault | undefined {
  const fault = (reason: AmountFault["reason"], units?: readonly string[]): AmountFault => ({
    ask: "how much",
    reason,
    word: amount?.unit?.word ?? commodity.names.en.one,
    ...(units ? { units } : {}),
  });
  if (amount?.negative) return fault("negative");
  if (amount?.count === 0) return fault("zero");
  if (weighed === "unknown unit")
    return fault(
      "unknown unit",
      commodity.household.units.map((unit) => unit.name),
    );
  if (!Number.isFinite(weighed.grams) || weighed.grams > mostGrams || (weighed.pieces ?? 0) > mostPieces)
    return fault("too large");
  return weighed.grams > 0 ? undefined : fault("zero");
}

function draft(
  commodity: Commodity,
  weighed: Weighed,
  states: readonly StateChange[],
  contradictory = false,
): DraftLot {
  const state: StateChange = Object.assign(
    {},
    ...states.filter((change) => !change.byColour || greenIsUnripe.has(commodity.id)),
  );
  const cut = state.form === "cut" || (state.form === undefined && weighed.partOfOne);
  const assumed = [...weighed.assumed];
  if (cut && state.form === undefined) assumed.push("cut, because half of one");
  const ripens = commodity.ripening !== undefined;
  if (ripens && state.ripeness === undefined) assumed.push("usual ripeness");
  return {
    lot: {
      commodity: commodity.id,
      grams: Math.round(weighed.grams * 100) / 100 || weighed.grams,
      ...(weighed.pieces !== undefined ? { pieces: weighed.pieces } : {}),
      ...(ripens && state.ripeness !== undefined ? { ripeness: state.ripeness } : {}),
      form: cut ? "cut" : "whole",
      tops: state.tops ?? false,
      washed: state.washed ?? false,
      extraDays: state.extraDays ?? 0,
    },
    sureOfAmount: contradictory ? Math.min(weighed.sure, 0.3) : weighed.sure,
    assumed,
    contradictory,
  };
}

/** The whole's weight where it is told twice: a mass told beside a bag or a count is the better of the two. */
function reconciled(
  commodity: Commodity,
  whole: Weighed,
  amount: Amount | undefined,
  restated: readonly Amount[],
): { whole: Weighed; contradictory: boolean } {
  let result = whole;
  let contradictory = false;
  for (const other of restated) {
    const second = weigh(commodity, other);
    if (second === "unknown unit" || faultOf(other, second, commodity)) contradictory = true;
    else if (other.ofOne && amount)
      result = { ...result, grams: second.grams * amount.count, sure: second.sure };
    else if (other.unit?.of === "mass" && amount?.unit?.of !== "mass" && (amount?.count ?? 1) <= 1)
      result = { ...second, ...(whole.pieces ? { pieces: whole.pieces } : {}) };
    else if (Math.abs(second.grams / result.grams - 1) > agreement) contradictory = true;
  }
  return { whole: result, contradictory };
}

/** What is left of the whole when its parts are taken out, or undefined when they are more than the whole. */
function remainder(whole: Weighed, parts: readonly Weighed[]): Weighed | "nothing" | undefined {
  const left = whole.grams - parts.reduce((sum, part) => sum + part.grams, 0);
  if (left < -1e-6 * whole.grams) return undefined;
  if (left <= 1e-6 * whole.grams) return "nothing";
  const pieces =
    whole.pieces === undefined
      ? undefined
      : whole.pieces - parts.reduce((sum, part) => sum + (part.pieces ?? 0), 0);
  const { pieces: _, ...rest } = whole;
  return { ...rest, grams: left, ...(pieces !== undefined && pieces > 0 ? { pieces } : {}) };
}

/** "1.5 avocados": one whole, and half of one that was cut, unless the form was told. */
function partedWhole(weighed: Weighed, states: readonly StateChange[]): { whole: Weighed; cut?: Weighed } {
  const { broken, ...plain } = weighed;
  if (!broken || states.some(({ form }) => form !== undefined)) return { whole: plain };
  const grams = plain.grams * broken.share;
  return {
    whole: { ...plain, grams, pieces: broken.whole },
    cut: { ...plain, grams: plain.grams - grams, partOfOne: true },
  };
}

/** Lots of one kind from what was said of it; the first fault in an amount instead, where there is one. */
export function draftLots(commodity: Commodity, said: Said): DraftLot[] | AmountFault {
  const parts: Weighed[] = [];
  for (const part of said.parts) {
    const weighed = weigh(commodity, part.amount, said.size);
    const fault = faultOf(part.amount, weighed, commodity);
    if (fault) return fault;
    if (weighed !== "unknown unit") parts.push(weighed);
  }
  const partLots = said.parts.map((part, index) =>
    draft(commodity, parts[index]!, [...said.states, ...part.states]),
  );
  if (!said.amount && partLots.length > 0) return partLots;
  const first = weigh(commodity, said.amount, said.size, said.singular);
  const fault = faultOf(said.amount, first, commodity);
  if (fault) return fault;
  const { whole, contradictory } = reconciled(commodity, first as Weighed, said.amount, said.restated);
  const { whole: unbroken, cut } = partedWhole(whole, said.states);
  const rest = remainder(unbroken, parts);
  if (rest === undefined) return [draft(commodity, whole, said.states, true)];
  return [
    ...(rest === "nothing" ? [] : [draft(commodity, rest, said.states, contradictory)]),
    ...partLots,
    ...(cut ? [draft(commodity, cut, said.states, contradictory)] : []),
  ];
}
