import { type PlanInHand, planAgain, takeInHand } from "@keepwright/planner";
import type { PlanAnswer, PlanAsked, QuickMessage } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";

/** Lots that may have come, gone or changed: a correction changes one, a hasty hand a few. Declared preference, no source. */
const mostCorrected = 3;

/** Whether a question is a corrected other one: same kitchen, household and day, and nearly the same things. */
export function isCorrected(before: PlanAsked, now: PlanAsked): boolean {
  const rest = ({ kitchen, household, from }: PlanAsked) => JSON.stringify([kitchen, household, from]);
  if (rest(before) !== rest(now)) return false;
  const had = new Set(before.lots.map((lot) => JSON.stringify(lot)));
  const same = now.lots.filter((lot) => had.has(JSON.stringify(lot))).length;
  return Math.max(before.lots.length, now.lots.length) - same <= mostCorrected;
}

/**
 * Answers corrected questions from the plan in hand, within moments; any other it leaves to the worker that plans from nothing, and so it does where
 * something is wrong with what is asked, which that worker says.
 */
export function quickAnswers(answer: (answer: PlanAnswer) => void): (message: QuickMessage) => void {
  let held: { readonly asked: PlanAsked; readonly inHand: PlanInHand } | undefined;
  const take = (asked: PlanAsked, inHand: PlanInHand) => {
    held = { asked, inHand };
  };
  const meanwhile = (asked: PlanAsked, number: number) => {
    if (!held || !isCorrected(held.asked, asked)) return;
    const inHand = planAgain(held.inHand, plannerRequest(asked));
    take(asked, inHand);
    answer({ number, kind: "meanwhile", plan: inHand.plan });
  };
  return (message) => {
    try {
      if (message.quick === "take in hand")
        take(message.asked, takeInHand(plannerRequest(message.asked), message.plan));
      else meanwhile(message.asked, message.number);
    } catch {
      // The worker that plans from nothing says what is wrong.
    }
  };
}
