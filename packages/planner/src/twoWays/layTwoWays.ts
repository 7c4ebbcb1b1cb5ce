import { addDays } from "@keepwright/quantities";
import { bindArrangement } from "../arrangement/bindArrangement.js";
import { arrangementFrom } from "../arrangement/checkArrangement.js";
import { completed } from "../arrangement/completed.js";
import { type Side, sideOf } from "../arrangement/lotBeside.js";
import { mealsOfEvaluation } from "../draws/meals.js";
import { choiceOfPlan } from "../explain/choiceOfPlan.js";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest } from "../problem/problem.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { searchPlan } from "../search/searchPlan.js";
import { type UnsortedHabit, unsortedChoice } from "../search/unsorted.js";
import { drawnEvenings } from "./drawnEvenings.js";
import { eveningsOf, sideDay } from "./evenings.js";
import type { TwoWays } from "./twoWays.js";

/** What is asked: a haul and a kitchen as for a plan, and how things lie when they are not planned. */
export interface TwoWaysRequest extends PlanRequest {
  /** What is filled first when nobody sorts; the refrigerator where neither this nor an arrangement is given. */
  readonly habit?: UnsortedHabit;
  /** How things lie, as a person told it, in place of a habit: see `arrangementSchema`. */
  readonly arrangement?: unknown;
  /** The plan, where it has been made already; searched for otherwise. */
  readonly plan?: Plan;
  /** Draws for the ranges; none where it is 0 or left out. */
  readonly draws?: number;
}

function unplanned(prepared: Prepared, { arrangement, habit }: TwoWaysRequest): Evaluation {
  if (arrangement === undefined) return evaluatePrepared(prepared, unsortedChoice(prepared.problem, habit));
  return completed(prepared, bindArrangement(prepared.problem, arrangementFrom(arrangement)));
}

/**
 * Lays one haul two ways, unsorted (or as told) and as planned, and says what becomes of it evening by evening: the same coupled simulation, safety limits and
 * exact eating days for both, so that the only difference is where things lie, in what, and what is done to them. It is the model's word, not a record of
 * a real kitchen. Pure and repeatable.
 *
 * Throws ArrangementError, KitchenError, HaulError, HouseholdError, or RangeError for a date that is none, for a plan for something else, or where
 * draws are asked for of what is carried over from an earlier plan.
 */
export function layTwoWays(request: TwoWaysRequest): TwoWays {
  const problem = bindProblem(request);
  const prepared = prepare(problem);
  const plan = request.plan
    ? evaluatePrepared(prepared, choiceOfPlan(problem, request.plan))
    : searchPlan(prepared);
  const planned = sideOf(prepared, plan);
  const unsorted = sideOf(prepared, unplanned(prepared, request));
  const evenings = eveningsOf(problem);
  const count = request.draws ?? 0;
  const drawn = ({ evaluation }: Side) =>
    count > 0 ? drawnEvenings(problem, mealsOfEvaluation(problem, evaluation), evenings, count) : undefined;
  const [unsortedDrawn, plannedDrawn] = [drawn(unsorted), drawn(planned)];
  const grams = problem.lots.reduce(
    (sum, { portions, gramsPerPortion }) => sum + portions * gramsPerPortion,
    0,
  );
  return {
    version: 1,
    rule: request.arrangement === undefined ? (request.habit ?? "refrigerator") : "as told",
    brought: { value: grams, unit: "g" },
    unsorted: unsorted.plan,
    planned: planned.plan,
    ...(count > 0 && { draws: { count, seed: problem.seed } }),
    evenings: evenings.map((day, at) => ({
      day,
      date: addDays(problem.from, day),
      after: at === evenings.length - 1,
      unsorted: { ...sideDay(prepared, unsorted, day), ...unsortedDrawn?.[at] },
      planned: { ...sideDay(prepared, planned, day), ...plannedDrawn?.[at] },
    })),
  };
}
