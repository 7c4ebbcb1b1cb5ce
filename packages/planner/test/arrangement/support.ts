import { type Arrangement, arrangementOfPlan } from "../../src/arrangement/index.js";
import { type JudgeRequest, judgeArrangement } from "../../src/arrangement/judgeArrangement.js";
import type { Judgement } from "../../src/arrangement/judgement.js";
import { InputError } from "../../src/problem/inputError.js";
import type { Plan } from "../../src/problem/plan.js";
import type { PlanRequest } from "../../src/problem/problem.js";
import { lot, request, smallKitchen } from "../support.js";

/** Invented: a haul small enough that plans are the best there is. */
export const threeLots = [
  lot("apple", 1500, { typed: "1.5 kg apples" }),
  lot("broccoli", 500, { typed: "2 Broccoli" }),
  lot("banana", 600, { typed: "4 bananas, green", pieces: 4, ripeness: "unripe" }),
];

export const small = (lots: readonly object[] = threeLots): PlanRequest =>
  request(lots, smallKitchen({ wraps: ["paper bag"] }), { people: 2 });

/** An arrangement as it stands in a file: what has a usual value may be left out. */
export const arrangement = (lots: readonly object[], vents: readonly object[] = []) => ({
  version: 1,
  lots,
  vents,
});

export const judged = (asked: PlanRequest, said: unknown): Judgement =>
  judgeArrangement({ ...asked, arrangement: said } satisfies JudgeRequest);

/** The message of the error that an arrangement brings. */
export function complaint(asked: PlanRequest, said: unknown): string {
  try {
    judged(asked, said);
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return "no complaint";
}

export const asPlanned = (plan: Plan): Arrangement => arrangementOfPlan(plan);
