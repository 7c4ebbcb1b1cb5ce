import { type PlanInHand, planAgain, takeInHand } from "@keepwright/planner";
import { isCorrected } from "./corrected.js";
import type { PlanAsked, QuickAnswer, QuickMessage } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";

/**
 * Answers corrected questions from the plan in hand, within moments; any other it leaves to the worker that plans from nothing, and so it does where
 * something is wrong with what is asked, which that worker says. Every question is answered, if only without a plan.
 */
export function quickAnswers(answer: (answer: QuickAnswer) => void): (message: QuickMessage) => void {
  let held: { readonly asked: PlanAsked; readonly inHand: PlanInHand } | undefined;
  const take = (asked: PlanAsked, inHand: PlanInHand) => {
    held = { asked, inHand };
  };
  const again = (asked: PlanAsked) => {
    if (!held || !isCorrected(held.asked, asked)) return undefined;
    const inHand = planAgain(held.inHand, plannerRequest(asked));
    take(asked, inHand);
    return inHand.plan;
  };
  return (message) => {
    if (message.quick === "take in hand") {
      orNothing(() => take(message.asked, takeInHand(plannerRequest(message.asked), message.plan)));
      return;
    }
    const { asked, number } = message;
    answer({ quick: "answer", number, plan: orNothing(() => again(asked)) });
  };
}

/** The worker that plans from nothing says what is wrong. */
function orNothing<Result>(act: () => Result): Result | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}
