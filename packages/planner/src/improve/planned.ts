import type { Plan } from "../problem/plan.js";
import { bindProblem, type Problem } from "../problem/problem.js";
import type { Evaluation } from "../search/evaluate.js";
import { planOf } from "../search/planOf.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { searchPlan } from "../search/searchPlan.js";
import type { CheckedRequest } from "./triedChange.js";

/** A plan with the judgement it was written from. */
export interface Planned {
  readonly prepared: Prepared;
  readonly evaluation: Evaluation;
  readonly plan: Plan;
}

/** Plans a bound problem, as `planHaul` does. */
export function plannedProblem(problem: Problem): Planned {
  const prepared = prepare(problem);
  const evaluation = searchPlan(prepared);
  return { prepared, evaluation, plan: planOf(prepared, evaluation) };
}

/** Plans a request with a seed, as `planHaul` does. */
export const planned = (request: CheckedRequest, seed: number): Planned =>
  plannedProblem(bindProblem({ ...request, seed }));

/** Edible grams expected to be wasted. */
export const wasteOf = ({ plan }: Planned): number => plan.expectedWaste.value;
