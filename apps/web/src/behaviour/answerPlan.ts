import {
  bindProblem,
  explainPlan,
  loadSolver,
  type Plan,
  type Problem,
  type Proof,
  planProblem,
  provePlan,
} from "@keepwright/planner";
import { carriedPlan } from "./carriedPlan.js";
import type { PlanAnswer, PlanRequest } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";

/**
 * Relaxations solved for a proof, less than a third of what the command line takes. Declared: nobody has asked for it here, it costs a telephone time and battery, and those after these lift the
 * bound by little (decision 0112).
 */
const mostRelaxations = 4;

/**
 * Answers a question: the plan, then the reasons, and only when both are on their way how much better any plan could be.
 * The solver is not asked for before that, and where it does not come or does not get through, the plan stands without.
 */
export async function answerPlan(
  { number, ...asked }: PlanRequest,
  answer: (answer: PlanAnswer) => void,
  load: typeof loadSolver = loadSolver,
): Promise<void> {
  let problem: Problem;
  let plan: Plan;
  try {
    const { since, ...bare } = asked;
    let request = plannerRequest(bare);
    problem = bindProblem(request);
    plan = planProblem(problem);
    const carried = since && carriedPlan(bare, plan, since);
    if (carried) {
      const { asked: now, past } = carried;
      request = plannerRequest(now);
      problem = bindProblem(request);
      plan = carried.plan;
      answer({ number, kind: "plan", plan, carried: { asked: now, past } });
    } else answer({ number, kind: "plan", plan });
    answer({ number, kind: "reasons", reasons: explainPlan({ ...request, plan }) });
  } catch (error) {
    answer({ number, kind: "problem", message: error instanceof Error ? error.message : String(error) });
    return;
  }
  answer({ number, kind: "proof", proof: await proofOf(problem, plan, load) });
}

async function proofOf(problem: Problem, plan: Plan, load: typeof loadSolver): Promise<Proof | undefined> {
  try {
    return provePlan(problem, plan.objective.total, await load(), { mostRelaxations });
  } catch {
    return undefined;
  }
}
