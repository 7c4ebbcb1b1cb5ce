import type { Plan } from "../problem/plan.js";
import type { PlanDraws } from "../problem/planDraws.js";
import type { Problem } from "../problem/problem.js";
import { unsortedChoice } from "../search/unsorted.js";
import { type CarriedOut, type CountedOccasion, carryOut } from "./carryOut.js";
import { drawByDraw, drawnFigure } from "./drawnFigure.js";
import { mealsOfChoice, mealsOfPlan } from "./meals.js";
import { type Spreads, usualSpreads } from "./spreads.js";

const grams = (values: Float64Array) => ({ ...drawnFigure(values), unit: "g" as const });

const shareOf = (values: Float64Array, counts: (value: number) => boolean): number =>
  values.filter(counts).length / values.length;

/** Mean of a figure of the occasions of a part, portion by portion. */
function byPortion(occasions: readonly CountedOccasion[], figure: (one: CountedOccasion) => number): number {
  const portions = occasions.reduce((sum, one) => sum + one.portions, 0);
  return occasions.reduce((sum, one) => sum + one.portions * figure(one), 0) / portions;
}

function drawnLot(id: string, out: CarriedOut, part: number): PlanDraws["lots"][number] {
  const occasions = out.occasions[part]!;
  const inTime = (one: CountedOccasion): number => one.inTime / (out.draws * one.portions);
  return {
    id,
    inTime: byPortion(occasions, inTime),
    claimed: byPortion(occasions, ({ claimed }) => 1 - claimed),
    unripe: byPortion(occasions, (one) => one.unripe / (out.draws * one.portions)),
    waste: grams(out.wastedByPart[part]!),
    occasions: occasions.map((one) => ({
      day: one.day,
      left: one.left,
      portions: one.portions,
      inTime: inTime(one),
      claimed: 1 - one.claimed,
    })),
  };
}

/**
 * A plan carried out as written in many draws, beside everything unsorted in the same draws.
 *
 * @param count how many draws, at least 1; a thousand leave the chance of a portion uncertain by 0.016 at most (one standard error)
 * @param seed the same seed gives the same to the last bit
 */
export function planDraws(
  problem: Problem,
  plan: Plan,
  count: number,
  seed: number,
  spreads: Spreads = usualSpreads,
): PlanDraws {
  const out = carryOut(problem, mealsOfPlan(problem, plan), count, seed, spreads);
  const unsorted = carryOut(problem, mealsOfChoice(problem, unsortedChoice(problem)), count, seed, spreads);
  const saved = drawByDraw(unsorted.wasted, out.wasted);
  return {
    count,
    seed,
    waste: grams(out.wasted),
    unsorted: {
      waste: grams(unsorted.wasted),
      saved: grams(saved),
      planBetter: shareOf(saved, (value) => value > leastDifference),
      planWorse: shareOf(saved, (value) => value < -leastDifference),
    },
    lots: plan.lots.map(({ id }, part) => drawnLot(id, out, part)),
  };
}

/** Grams below which two sums of the same portions, taken in another order, are the same. */
const leastDifference = 1e-6;
