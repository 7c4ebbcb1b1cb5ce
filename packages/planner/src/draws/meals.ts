import { choiceOfPlan } from "../explain/choiceOfPlan.js";
import type { Plan } from "../problem/plan.js";
import type { Problem } from "../problem/problem.js";
import type { Choice } from "../problem/programme.js";
import { eatingHabits } from "../rules/weights.js";
import type { Evaluation } from "../search/evaluate.js";
import { evaluate } from "../search/evaluateChoice.js";

/** Portions of a part at one occasion: a planned meal, or what is left over. */
export interface Occasion {
  /** Day planned for [d from the first]; of what is left over, the day it is taken to be eaten. */
  readonly day: number;
  readonly left: boolean;
  readonly portions: number;
  /** How many of them are thrown away whatever is drawn: of a piece that was begun and is no longer safe by then. */
  readonly thrown?: number;
  /** Chance of having to be thrown away then, as the planner claims [1]. */
  readonly claimed: number;
}

/** What is decided, and when each part is eaten. */
export interface PlannedMeals {
  readonly choice: Choice;
  /** Of each part of the choice, in the order of days. */
  readonly occasions: readonly (readonly Occasion[])[];
}

const leftDay = (problem: Problem): number => problem.household.days - 1 + eatingHabits.leftOverDays;

/** A plan as written: its own eating days and chances. Throws RangeError when it is not one for this haul and kitchen. */
export function mealsOfPlan(problem: Problem, plan: Plan): PlannedMeals {
  const choice = choiceOfPlan(problem, plan);
  const occasions = plan.lots.map(({ eatOn, leftPortions, ifLeft, cutOpen = [] }) => [
    ...eatOn.map(
      ({ day, portions, chancePastBest }): Occasion => ({
        day,
        left: false,
        portions,
        claimed: chancePastBest ?? Number.NaN,
      }),
    ),
    ...(leftPortions > 0
      ? [
          {
            day: leftDay(problem),
            left: true,
            portions: leftPortions,
            thrown: cutOpen.reduce((sum, { portionsAfter }) => sum + portionsAfter, 0),
            claimed: ifLeft?.chancePastBest ?? Number.NaN,
          },
        ]
      : []),
  ]);
  return { choice, occasions };
}

/** Any judged choice, eaten on the days that were found best for it. */
export function mealsOfEvaluation(problem: Problem, { choice, eating, costs }: Evaluation): PlannedMeals {
  const occasions = choice.parts.map((_, part) => {
    const { chancePast, chancePastLeft } = costs[part]!;
    const meals = eating.eaten[part]!.map(
      (portions, day): Occasion => ({
        day,
        left: false,
        portions,
        claimed: chancePast[day]!,
      }),
    );
    const rest: Occasion = {
      day: leftDay(problem),
      left: true,
      portions: eating.left[part]!,
      thrown: eating.thrown[part]!,
      claimed: chancePastLeft,
    };
    return [...meals, rest].filter(({ portions }) => portions > 0);
  });
  return { choice, occasions };
}

/** A choice, eaten on the days that are best for it. */
export const mealsOfChoice = (problem: Problem, choice: Choice): PlannedMeals =>
  mealsOfEvaluation(problem, evaluate(problem, choice));
