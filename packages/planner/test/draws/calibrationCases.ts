import { example, exampleNames } from "../../../../examples/example.js";
import {
  bindProblem,
  carryOut,
  type DrawnFigure,
  drawByDraw,
  drawnFigure,
  mealsOfChoice,
  mealsOfPlan,
  type PlannedMeals,
  type Problem,
  planProblem,
  unsortedChoice,
  usualSpreads,
} from "../../src/index.js";
import { randomRequest, type Size } from "../cases/randomRequest.js";

/** Draws of each haul: the thousand that the guide of the command line asks for. */
export const draws = 1000;
const seed = 1;
/** Generated hauls, small enough to be planned in about a second. Everything in them is invented. */
const generated = 30;
const size: Size = { lots: [3, 6], places: [2, 5], wraps: [0, 5], days: [5, 10], ripening: 3 };

/** One occasion of a part: what the planner claims and what the draws gave, as chances of being eaten in time. */
export interface Compared {
  readonly haul: string;
  readonly kind: string;
  readonly portions: number;
  readonly claimed: number;
  readonly observed: number;
}

/** A haul with its plan carried out: what the plan claims to waste, what it wasted, and what it saved over unsorted. */
export interface HaulDrawn {
  readonly name: string;
  readonly lots: number;
  readonly isExample: boolean;
  readonly claimed: number;
  readonly waste: DrawnFigure;
  readonly saved: DrawnFigure;
  readonly compared: readonly Compared[];
}

function comparedIn(name: string, problem: Problem, carried: PlannedMeals) {
  const out = carryOut(problem, carried, draws, seed, usualSpreads);
  const lotOf = (part: number) => problem.lots[carried.choice.parts[part]!.lot]!;
  const compared = out.occasions.flatMap((own, part) =>
    own.map(
      ({ portions, claimed, inTime }): Compared => ({
        haul: name,
        kind: lotOf(part).commodity.id,
        portions,
        claimed: 1 - claimed,
        observed: inTime / (draws * portions),
      }),
    ),
  );
  return { wasted: out.wasted, compared };
}

function drawn(name: string, problem: Problem, isExample: boolean): HaulDrawn {
  const plan = planProblem(problem);
  const planned = comparedIn(name, problem, mealsOfPlan(problem, plan));
  const unsorted = comparedIn(name, problem, mealsOfChoice(problem, unsortedChoice(problem)));
  return {
    name,
    lots: problem.lots.length,
    isExample,
    claimed: plan.expectedWaste.value,
    waste: drawnFigure(planned.wasted),
    saved: drawnFigure(drawByDraw(unsorted.wasted, planned.wasted)),
    compared: [...planned.compared, ...unsorted.compared],
  };
}

/** The worked examples and the generated hauls, each planned and carried out. */
export const drawnHauls = (): HaulDrawn[] => [
  ...exampleNames.map((name) => drawn(name, bindProblem(example(name).request), true)),
  ...Array.from({ length: generated }, (_, index) =>
    drawn(`generated ${index + 1}`, bindProblem(randomRequest(index + 1, size)), false),
  ),
];
