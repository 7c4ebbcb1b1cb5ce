import { choiceOfPlan } from "../explain/choiceOfPlan.js";
import type { Plan } from "../problem/plan.js";
import { bindProblem, type PlanRequest } from "../problem/problem.js";
import { evaluatePrepared } from "../search/evaluate.js";
import { prepare } from "../search/prepare.js";
import type { PlanInHand } from "./planAgain.js";

/**
 * A plan made elsewhere taken in hand, to plan again from (`planAgain`). Every lot alone is worked out for it now, so that a correction need not wait
 * for that. Throws what `planHaul` throws, and where the plan is not one of what is asked.
 */
export function takeInHand(request: PlanRequest, plan: Plan): PlanInHand {
  const problem = bindProblem(request);
  const prepared = prepare(problem);
  for (const { index } of problem.lots) prepared.options(index);
  return { plan, prepared, evaluation: evaluatePrepared(prepared, choiceOfPlan(problem, plan)) };
}
