import type { BoundLot } from "../problem/bindHaul.js";
import { told } from "../problem/findingCode.js";
import { type Finding, HappenedError } from "../problem/inputError.js";
import { sum } from "../problem/sum.js";
import { hasSafeTime } from "../rules/underControl.js";
import type { BoundHappened, BoundHappening } from "./bindHappened.js";
import type { HappenedAmount } from "./happened.js";
import type { Previous } from "./previous.js";

export const waysGone = ["eaten", "given away", "frozen", "thrown out"] as const;
export type WayGone = (typeof waysGone)[number];

/** What is left of a part, and what became of the rest. */
export interface Remaining {
  readonly grams: number;
  /** Portions left: 0 where nothing worth planning is. */
  readonly portions: number;
  /** Portions the plan had meant to be left by now. */
  readonly plannedPortions: number;
  readonly gone: Readonly<Record<WayGone, number>>;
}

interface Counting {
  readonly lot: BoundLot;
  readonly start: number;
  left: number;
  /** Of what is gone, what is only taken to be eaten since the plan said so. */
  assumed: number;
  readonly gone: Record<WayGone, number>;
}

/** Less than this share of a portion is nothing. */
const nothing = 0.05;
/** More said to be gone than there was, by up to this share of it, is all of it: people round. */
const roundedUp = 0.1;

/** What a lot is called, in what is told of it in an error. */
const nameIn = (thing: string): string => thing.replace("happened lot ", "");

/** An amount in grams, or why it cannot be told. */
function gramsOf(amount: HappenedAmount, of: readonly Counting[], thing: string): number | Finding {
  if (amount === "all") return Number.POSITIVE_INFINITY;
  if (amount === "none") return 0;
  if ("portions" in amount) return amount.portions * of[0]!.lot.gramsPerPortion;
  if ("share" in amount) return amount.share * sum(of.map(({ start }) => start));
  if (!("pieces" in amount)) return amount.grams;
  const { lot } = of[0]!.lot;
  if (lot.pieces === undefined && amount.grams !== undefined) return amount.grams;
  return lot.pieces === undefined
    ? {
        thing,
        value: `${amount.pieces} pieces, and its pieces were not counted when it came home`,
        remedy: `Give "grams" or "portions" instead.`,
        ...told("pieces not counted", { lot: nameIn(thing), pieces: amount.pieces }),
      }
    : amount.pieces * (lot.grams / lot.pieces);
}

/** What is said to be thrown out, given away or frozen was not eaten before, whatever the plan had meant: as much as is wanted comes back. */
function notEatenAfterAll(wanted: number, from: readonly Counting[]): void {
  const there = sum(from.map(({ left }) => left));
  let missing = Number.isFinite(wanted)
    ? wanted - there
    : there < nothing * from[0]!.lot.gramsPerPortion
      ? wanted
      : 0;
  for (const part of from) {
    const back = Math.max(0, Math.min(part.assumed, missing));
    part.assumed -= back;
    part.gone.eaten -= back;
    part.left += back;
    missing -= back;
  }
}

/** Takes an amount out of the parts, one after the other. Returns what is wrong with it. */
function take(amount: HappenedAmount, from: readonly Counting[], way: WayGone, thing: string): Finding[] {
  const grams = gramsOf(amount, from, thing);
  if (typeof grams === "object") return [grams];
  if (way !== "eaten" && grams > 0) notEatenAfterAll(grams, from);
  const there = sum(from.map(({ left }) => left));
  if (Number.isFinite(grams) && grams > there * (1 + roundedUp) + 1) {
    const value = `${Math.round(grams)} g ${way}, and there were ${Math.round(there)} g`;
    const values = { lot: nameIn(thing), grams: Math.round(grams), there: Math.round(there) };
    const remedy = "Correct the amount; write “all” for all of it.";
    return [{ thing, value, remedy, ...told(`more ${way} than there was`, values) }];
  }
  let missing = Math.min(grams, there);
  for (const part of from) {
    const taken = Math.min(part.left, missing);
    part.left -= taken;
    part.gone[way] += taken;
    missing -= taken;
  }
  return [];
}

/** Whether any of it has a safe time or would have one once cut: as newly come home it would begin anew. */
const mayBeCut = (of: readonly Counting[]): boolean =>
  of.some(({ lot }) => hasSafeTime(lot) || lot.produce.timeTemperatureControl);

/** Leaves an amount of the parts: what is eaten last stays. */
function leave(amount: HappenedAmount, of: readonly Counting[], thing: string): Finding[] {
  const grams = gramsOf(amount, of, thing);
  if (typeof grams === "object") return [grams];
  const there = sum(of.map(({ left }) => left));
  if (Number.isFinite(grams) && grams > there * (1 + roundedUp) + 1) {
    const value = `${Math.round(grams)} g left, and there were ${Math.round(there)} g`;
    const values = { lot: nameIn(thing), grams: Math.round(grams), there: Math.round(there) };
    if (mayBeCut(of)) {
      const remedy = "Correct the amount; of what else there is say when it was cut.";
      return [{ thing, value, remedy, ...told("more cut left than there was", values) }];
    }
    const remedy = "Correct the amount, or write what came home since as come home.";
    return [{ thing, value, remedy, ...told("more left than there was", values) }];
  }
  return take({ grams: Math.max(0, there - Math.min(grams, there)) }, of, "eaten", thing);
}

const eats = ({ said }: BoundHappening): boolean => said.eaten !== undefined || said.left !== undefined;

const plannedUntil = (previous: Previous, part: number, day: number): number =>
  sum(previous.plan.lots[part]!.eatOn.filter((meal) => meal.day < day).map(({ portions }) => portions));

function removals(happening: BoundHappening, all: readonly Counting[]): Finding[] {
  const { said, thing, parts } = happening;
  const of = parts.map((part) => all[part]!);
  return [
    ...(said.eaten === undefined ? [] : take(said.eaten, of, "eaten", thing)),
    ...(said.thrownOut === undefined ? [] : take(said.thrownOut, of, "thrown out", thing)),
    ...(said.givenAway === undefined ? [] : take(said.givenAway, of, "given away", thing)),
    ...(said.frozen === undefined ? [] : take(said.frozen, of, "frozen", thing)),
  ];
}

/** What is told to be left holds for the day it is now, in whatever order it is told: it is counted after all that is gone. */
function remainders({ said, thing, parts }: BoundHappening, all: readonly Counting[]): Finding[] {
  if (said.left === undefined) return [];
  return leave(
    said.left,
    parts.map((part) => all[part]!),
    thing,
  );
}

/**
 * What is left of every part on a day. What is said to be eaten of a lot is all that was eaten of it; of a lot nothing is said of, what the plan had meant to be eaten before that day was.
 * Throws HappenedError where more is said to be gone than there was.
 */
export function remainingParts(previous: Previous, happened: BoundHappened, day: number): Remaining[] {
  const { problem, choice } = previous;
  const told = new Set(happened.happenings.filter(eats).flatMap(({ parts }) => parts));
  const meals = choice.parts.map((_, part) => plannedUntil(previous, part, day));
  const counting = choice.parts.map(({ lot: index, portions }, part): Counting => {
    const lot = problem.lots[index]!;
    const asPlanned = happened.followed && !told.has(part) ? meals[part]! : 0;
    return {
      lot,
      start: portions * lot.gramsPerPortion,
      left: (portions - asPlanned) * lot.gramsPerPortion,
      assumed: asPlanned * lot.gramsPerPortion,
      gone: { eaten: asPlanned * lot.gramsPerPortion, "given away": 0, frozen: 0, "thrown out": 0 },
    };
  });
  const { happenings } = happened;
  const findings = [
    ...happenings.flatMap((happening) => removals(happening, counting)),
    ...happenings.flatMap((happening) => remainders(happening, counting)),
  ];
  if (findings.length > 0) throw new HappenedError(findings);
  return counting.map(({ lot, left, gone }, part) => {
    const portions = left / lot.gramsPerPortion;
    const there = portions >= nothing;
    return {
      grams: there ? left : 0,
      portions: there ? Math.max(1, Math.round(portions)) : 0,
      plannedPortions: choice.parts[part]!.portions - meals[part]!,
      gone,
    };
  });
}
