import { bindArrangement } from "../arrangement/bindArrangement.js";
import { arrangementFrom } from "../arrangement/checkArrangement.js";
import { withFixed } from "../arrangement/completed.js";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest, type Problem } from "../problem/problem.js";
import type { Evaluation } from "../search/evaluate.js";
import { planOf } from "../search/planOf.js";
import { type Prepared, prepare, prepareAfter } from "../search/prepare.js";
import { searchAgain } from "../search/searchAgain.js";
import { type Progress, searchPlan } from "../search/searchPlan.js";

/** A plan with what it rests on, to be handed to `planAgain` when something is corrected. Nothing of it but the plan is for reading. */
export interface PlanInHand {
  readonly plan: Plan;
  readonly prepared: Prepared;
  readonly evaluation: Evaluation;
}

/** The plan of `planHaul`, with what it rests on. Throws what that throws. */
export function planInHand(
  request: PlanRequest & { readonly progress?: (progress: Progress) => void },
): PlanInHand {
  const prepared = prepare(bindProblem(request));
  const evaluation = searchPlan(prepared, request.progress);
  return { plan: planOf(prepared, evaluation), prepared, evaluation };
}

/** A request after a correction. */
export interface CorrectedRequest extends PlanRequest {
  /** How some things lie now and are to go on lying (see `arrangementSchema`): "I moved it". Everything is free unless given. */
  readonly arrangement?: unknown;
}

const samePlaces = (before: Problem, now: Problem): boolean =>
  before.places.length === now.places.length &&
  before.vents.length === now.vents.length &&
  before.places.every(({ place }, index) => place.id === now.places[index]!.place.id);

/** A problem with the best found for it from how things lay in the plan in hand; from nothing where the places are others. */
export function preparedAgain(
  before: PlanInHand,
  problem: Problem,
): Pick<PlanInHand, "prepared" | "evaluation"> {
  const prepared = prepareAfter(before.prepared, problem);
  return { prepared, evaluation: foundAgain(before, prepared) };
}

const foundAgain = (before: PlanInHand, prepared: Prepared): Evaluation =>
  samePlaces(before.prepared.problem, prepared.problem)
    ? searchAgain(prepared, before.prepared, before.evaluation)
    : searchPlan(prepared);

/**
 * Plans again after a correction (an amount, a ripeness, a lot more or less, a thing that was moved), going on from the plan in hand: what was worked out about
 * lots that are as they were is used again, and the search begins where they lie. Much quicker than planning from nothing and never worse than
 * leaving everything where the plan in hand had it; `planHaul` may still find something better.
 *
 * Pure and repeatable: the same plan in hand and the same request give the same plan. Throws what `planHaul` throws, and ArrangementError.
 */
export function planAgain(before: PlanInHand, request: CorrectedRequest): PlanInHand {
  const problem = bindProblem(request);
  const free = prepareAfter(before.prepared, problem);
  const prepared =
    request.arrangement === undefined
      ? free
      : withFixed(free, bindArrangement(problem, arrangementFrom(request.arrangement)));
  const evaluation = foundAgain(before, prepared);
  return { plan: planOf(prepared, evaluation), prepared: free, evaluation };
}
