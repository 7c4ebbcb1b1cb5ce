import {
  bindProblem,
  explainPlan,
  loadSolver,
  type Plan,
  type PlanRequest as Planned,
  type Proof,
  planProblem,
  provePlan,
} from "@keepwright/planner";
import { carriedPlan } from "./carriedPlan.js";
import type { AfterRequest, PlanAnswer, PlanAsked, PlanRequest } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";
import { whatFailed } from "./whatFailed.js";

/**
 * Relaxations solved for a proof, less than a third of what the command line takes. Declared: nobody has asked for it here, it costs a telephone time and battery, and those after these lift the
 * bound by little (decision 0112).
 */
const mostRelaxations = 4;

type Answer = (answer: PlanAnswer) => void;

/**
 * Answers questions with a plan, carried on where days have gone by since, or with what is wrong. The last plan of a first day is remembered: what became of it
 * since is asked about again and again.
 */
export function planAnswerer(): (request: PlanRequest, answer: Answer) => void {
  let last: { readonly asked: string; readonly plan: Plan } | undefined;
  return (request, answer) =>
    answerPlan(request, answer, (asked) => {
      const words = JSON.stringify(asked);
      if (last?.asked !== words) {
        last = { asked: words, plan: planProblem(bindProblem(plannerRequest(asked))) };
      }
      return last.plan;
    });
}

function answerPlan(
  { number, since, ...asked }: PlanRequest,
  answer: Answer,
  planOf: (asked: PlanAsked) => Plan,
): void {
  attempt(number, answer, () => {
    const plan = planOf(asked);
    const carried = since && carriedPlan(asked, plan, since);
    if (!carried) answer({ number, kind: "plan", plan });
    else {
      const { plan: now, ...of } = carried;
      answer({ number, kind: "plan", plan: now, carried: of });
    }
  });
}

/**
 * Answers what follows from a plan: the reasons, and only when they are on their way how much better any plan could be.
 * The solver is not asked for before that, and where it does not come or does not get through, the plan stands without.
 */
export async function answerAfterPlan(
  { number, plan, ...asked }: AfterRequest,
  answer: Answer,
  load: typeof loadSolver = loadSolver,
): Promise<void> {
  const request = plannerRequest(asked);
  const told = attempt(number, answer, () =>
    answer({ number, kind: "reasons", reasons: explainPlan({ ...request, plan }) }),
  );
  if (told) answer({ number, kind: "proof", proof: await proofOf(request, plan, load) });
}

function attempt(number: number, answer: Answer, act: () => void): boolean {
  try {
    act();
    return true;
  } catch (error) {
    answer({ number, kind: "problem", ...whatFailed(error) });
    return false;
  }
}

async function proofOf(request: Planned, plan: Plan, load: typeof loadSolver): Promise<Proof | undefined> {
  try {
    return provePlan(bindProblem(request), plan.objective.total, await load(), { mostRelaxations });
  } catch {
    return undefined;
  }
}
