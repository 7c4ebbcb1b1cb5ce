import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest, type Problem } from "../problem/problem.js";
import { planOf } from "./planOf.js";
import { prepare } from "./prepare.js";
import { type Progress, searchPlan } from "./searchPlan.js";

/** The plan for a problem that has been bound already. */
export function planProblem(problem: Problem, progress?: (progress: Progress) => void): Plan {
  const prepared = prepare(problem);
  return planOf(prepared, searchPlan(prepared, progress));
}

/**
 * The plan for a haul in a kitchen: where each thing goes, wrapped how, moved when, eaten on which day.
 *
 * Pure and repeatable: the same request gives the same plan. Throws KitchenError, HaulError, HouseholdError, or RangeError
 * for a date that is none.
 *
 * @param progress told now and then how far the search has come
 */
export function planHaul(request: PlanRequest & { readonly progress?: (progress: Progress) => void }): Plan {
  return planProblem(bindProblem(request), request.progress);
}
