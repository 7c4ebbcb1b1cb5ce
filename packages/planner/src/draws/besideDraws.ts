import type { Problem } from "../problem/problem.js";
import { carryOut } from "./carryOut.js";
import { type DrawnFigure, drawByDraw, drawnFigure } from "./drawnFigure.js";
import type { PlannedMeals } from "./meals.js";
import { usualSpreads } from "./spreads.js";

/** How much is thrown away as things lie, in the plan and after one move, each carried out in the same draws [g]. */
export interface BesideDraws {
  /** How many draws. */
  readonly count: number;
  readonly yours: DrawnFigure;
  readonly plan: DrawnFigure;
  /** Waste as things lie less that in the plan, draw by draw. */
  readonly lost: DrawnFigure;
  /** Waste as things lie less that after the one move, draw by draw; undefined where there is no such move. */
  readonly savedByMove: DrawnFigure | undefined;
}

/** What is carried out in every draw. */
export interface Beside {
  readonly yours: PlannedMeals;
  readonly plan: PlannedMeals;
  readonly moved: PlannedMeals | undefined;
}

/**
 * Carries out an arrangement, the plan and the arrangement after one move in the same draws, so that what they share falls out of the differences.
 * Repeatable: it takes the problem's own seed. Throws RangeError where a lot is carried over from an earlier plan.
 *
 * @param count draws, at least 1
 */
export function besideDraws(problem: Problem, { yours, plan, moved }: Beside, count: number): BesideDraws {
  const wasted = (meals: PlannedMeals): Float64Array =>
    carryOut(problem, meals, count, problem.seed, usualSpreads).wasted;
  const here = wasted(yours);
  const planned = wasted(plan);
  return {
    count,
    yours: drawnFigure(here),
    plan: drawnFigure(planned),
    lost: drawnFigure(drawByDraw(here, planned)),
    savedByMove: moved && drawnFigure(drawByDraw(here, wasted(moved))),
  };
}
