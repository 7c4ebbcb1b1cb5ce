import type { LotOutcome } from "@keepwright/physics";
import { keyedUniform } from "@keepwright/quantities";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { hasSafeTime } from "../rules/underControl.js";
import { eatingHabits } from "../rules/weights.js";
import type { Occasion, PlannedMeals } from "./meals.js";
import type { Repeated } from "./simulateDraw.js";

/** A part's portions in the order in which its lot is eaten: where each occasion's first one stands in it. */
export function firstPortions({ choice, occasions }: PlannedMeals): number[][] {
  const all = occasions.flatMap((own, part) =>
    own.map(({ day, portions }, at) => ({ lot: choice.parts[part]!.lot, part, at, day, portions })),
  );
  const firsts = occasions.map((own) => own.map(() => 0));
  const eaten = new Map<number, number>();
  for (const { lot, part, at, portions } of all.sort((a, b) => a.day - b.day || a.part - b.part)) {
    const before = eaten.get(lot) ?? 0;
    firsts[part]![at] = before;
    eaten.set(lot, before + portions);
  }
  return firsts;
}

/** Good and safe on a day. The safe time is the household's rule, so an end by it is left to the rule. */
export function isGood(lot: BoundLot, outcome: LotOutcome, lastSafe: number, day: number): boolean {
  if (day > lastSafe) return false;
  return (hasSafeTime(lot) && outcome.endedBy === "safety") || outcome.endDay > day;
}

/** The day a portion is eaten on in a draw: as planned, or late [d from the first]. What is left over has no day to be missed. */
export function dayEaten(
  { seed, spreads }: Repeated,
  key: string,
  { day, left }: Pick<Occasion, "day" | "left">,
  portion: number,
  draw: number,
): number {
  const chance = keyedUniform(seed, `late ${key} ${portion}`, draw);
  return day + (!left && chance < spreads.lateShare ? eatingHabits.lateDays : 0);
}

/** What an earlier plan left is known to be good, which the draws of a lot on arrival do not know. */
export function refuseCarriedOver({ lots }: Problem): void {
  const over = lots.find((lot) => lot.carried);
  if (over === undefined) return;
  throw new RangeError(
    `The lot “${over.lot.id}” is carried over from an earlier plan, which cannot be drawn yet. Ask for draws of a plan for what has just come home.`,
  );
}
