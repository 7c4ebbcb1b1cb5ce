import {
  type CarryOnRequest,
  carryOn,
  carryOnAgain,
  type PlanInHand,
  planAgain,
  takeInHand,
} from "@keepwright/planner";
import { carriedPlan } from "./carriedPlan.js";
import { isCorrected } from "./corrected.js";
import type { Carried, PlanAsked, QuickAnswer, QuickMessage } from "./planMessages.js";
import { plannerRequest } from "./plannerRequest.js";

interface Held {
  readonly asked: PlanAsked;
  /** The plan of the first day. */
  readonly first: PlanInHand;
  /** What that was carried on to, where days have gone by since. */
  readonly now?: PlanInHand;
}

type Answered = Pick<QuickAnswer, "plan" | "carried">;
const without: Answered = { plan: undefined };

/**
 * Answers corrected questions from the plan in hand, within moments; any other it leaves to the worker that plans from nothing, and so it does where
 * something is wrong with what is asked, which that worker says. Every question is answered, if only without a plan.
 */
export function quickAnswers(answer: (answer: QuickAnswer) => void): (message: QuickMessage) => void {
  let held: Held | undefined;
  const again = (asked: PlanAsked): Answered => {
    if (!held || !isCorrected(held.asked, asked)) return without;
    const first = sameFirst(held.asked, asked) ? held.first : planAgain(held.first, plannerRequest(asked));
    const { now, ...given } = carriedAgain(asked, first, held.now);
    held = { asked, first, ...(now && { now }) };
    return given;
  };
  return (message) => {
    if (message.quick === "take in hand") {
      held = orElse(() => taken(message), held);
      return;
    }
    const { asked, number } = message;
    answer({ quick: "answer", number, ...orElse(() => again(asked), without) });
  };
}

const sameFirst = (one: PlanAsked, other: PlanAsked): boolean =>
  JSON.stringify({ ...one, since: undefined }) === JSON.stringify({ ...other, since: undefined });

function taken({ asked, plan, carried }: Extract<QuickMessage, { quick: "take in hand" }>): Held {
  if (!carried) return { asked, first: takeInHand(plannerRequest(asked), plan) };
  return {
    asked,
    first: takeInHand(plannerRequest(asked), carried.past),
    now: takeInHand(plannerRequest(carried.asked), plan),
  };
}

/** The plan of the first day, or what it is carried on to from how things lay in the one in hand. */
function carriedAgain(
  asked: PlanAsked,
  { plan }: PlanInHand,
  before: PlanInHand | undefined,
): Answered & { readonly now?: PlanInHand } {
  let now: PlanInHand | undefined;
  const carry = (request: CarryOnRequest) => {
    if (!before) return carryOn(request);
    const { told, inHand } = carryOnAgain(before, request);
    now = inHand;
    return told;
  };
  const made = asked.since && carriedPlan(asked, plan, asked.since, carry);
  if (!made) return { plan };
  const carried: Carried = { asked: made.asked, past: made.past };
  return { plan: made.plan, carried, ...(now && { now }) };
}

/** The worker that plans from nothing says what is wrong. */
function orElse<Result>(act: () => Result, otherwise: Result): Result {
  try {
    return act();
  } catch {
    return otherwise;
  }
}
