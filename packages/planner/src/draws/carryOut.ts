import type { LotOutcome } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { lastSafeDay } from "../rules/safeTime.js";
import type { Occasion, PlannedMeals } from "./meals.js";
import { dayEaten, firstPortions, isGood, refuseCarriedOver } from "./portions.js";
import { type Repeated, repeated, simulateDraw } from "./simulateDraw.js";
import type { Spreads } from "./spreads.js";

/** Portions over all draws, by occasion: out of draws × portions. */
export interface CountedOccasion extends Occasion {
  /** Portions that were still good and safe when eaten. */
  inTime: number;
  /** Portions that were not yet ripe when eaten. */
  unripe: number;
}

/** A choice carried out in every draw. */
export interface CarriedOut {
  readonly draws: number;
  readonly occasions: readonly (readonly CountedOccasion[])[];
  /** Grams thrown away in each draw: of each part, and in all. */
  readonly wastedByPart: readonly Float64Array[];
  readonly wasted: Float64Array;
}

interface Tally {
  readonly firsts: readonly (readonly number[])[];
  readonly out: CarriedOut;
}

/** Eats one part as planned in one draw, some portions late. */
function eatPart(asked: Repeated, { out, firsts }: Tally, index: number, outcome: LotOutcome, draw: number) {
  const { problem, choice, keys } = asked;
  const part = choice.parts[index]!;
  const lot = problem.lots[part.lot]!;
  const lastSafe = lastSafeDay(problem, lot, part.programme, outcome.stayStarts);
  const readyDay = firstReadyDay(outcome.ripeDay);
  let lost = 0;
  for (const [at, occasion] of out.occasions[index]!.entries()) {
    const first = firsts[index]![at]!;
    for (let portion = first; portion < first + occasion.portions; portion++) {
      const day = dayEaten(asked, keys[part.lot]!, occasion, portion, draw);
      if (portion >= first + (occasion.thrown ?? 0) && isGood(lot, outcome, lastSafe, day)) occasion.inTime++;
      else lost++;
      if (day < readyDay) occasion.unripe++;
    }
  }
  out.wastedByPart[index]![draw] = lost * lot.gramsPerPortion;
  out.wasted[draw]! += lost * lot.gramsPerPortion;
}

/**
 * Carries a choice out as written in each of a number of draws: the whole kitchen is simulated with temperatures, ages and biology drawn, and everything is
 * eaten on its planned day, a share of portions late. Nobody looks, and nobody eats what goes off first: that is what a plan is judged by.
 *
 * Pure: the same seed gives the same to the last bit, and a lot meets the same draws whatever else is in the haul, so two choices can be set against each
 * other draw by draw. Throws RangeError naming the lot where one is carried over from an earlier plan: what is seen of it since would have to count.
 */
export function carryOut(
  problem: Problem,
  carried: PlannedMeals,
  draws: number,
  seed: number,
  spreads: Spreads,
): CarriedOut {
  refuseCarriedOver(problem);
  const asked = repeated(problem, carried.choice, seed, spreads);
  const out: CarriedOut = {
    draws,
    occasions: carried.occasions.map((own) => own.map((one) => ({ ...one, inTime: 0, unripe: 0 }))),
    wastedByPart: carried.choice.parts.map(() => new Float64Array(draws)),
    wasted: new Float64Array(draws),
  };
  const tally = { firsts: firstPortions(carried), out };
  for (let draw = 0; draw < draws; draw++) {
    const outcomes = simulateDraw(asked, draw);
    for (const [index, outcome] of outcomes.entries()) eatPart(asked, tally, index, outcome, draw);
  }
  return out;
}
