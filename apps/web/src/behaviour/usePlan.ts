import type { LotReason, Plan, Proof } from "@keepwright/planner";
import { planDesk } from "./planDesk.js";
import type { PlanAnswer, PlanAsked } from "./planMessages.js";
import { startWorker } from "./startWorker.js";
import { type Asking, type AskingHow, useAsking } from "./useAsking.js";

/** A plan with what it was asked for, so that its words never mix with what was typed since. */
export interface MadePlan {
  readonly asked: PlanAsked;
  /** The question of the page that it answers: the same, but where the plan was carried on. */
  readonly first: PlanAsked;
  /** The plan of the first day, where this one was carried on from it. */
  readonly past: Plan | undefined;
  readonly plan: Plan;
  readonly reasons: readonly LotReason[];
  /** Number of the question it answers: what comes later for another one does not belong to it. */
  readonly number: number;
  /** True until it is known how much better it could be, or that this stays unknown. */
  readonly proving: boolean;
}

export type PlanState = Asking<MadePlan>;

/** Plans in a worker whenever what is asked changes; letters come when the hand rests (`restingLetters`). */
export const usePlan = (ask: PlanAsked | undefined) => useAsking(ask, how);

const how: AskingHow<PlanAsked, PlanAnswer, MadePlan> = {
  open: (answered) => planDesk({ plan: startWorker, quick: startWorker, after: startWorker }, answered),
  pause: 50,
  after: afterAnswer,
};

type AnsweredPlan = Pick<Extract<PlanAnswer, { kind: "plan" }>, "plan" | "number" | "carried">;

export function afterAnswer(before: PlanState, answer: PlanAnswer, asked: PlanAsked): PlanState {
  const { made } = before;
  const { number } = answer;
  switch (answer.kind) {
    case "meanwhile":
      return { made: madeOf(answer, asked), problem: undefined, working: true };
    case "plan":
      return { made: madeOf(answer, asked), problem: undefined, working: false };
    case "reasons":
      return made?.number === number ? { ...before, made: { ...made, reasons: answer.reasons } } : before;
    case "proof":
      return made?.number === number ? { ...before, made: proved(made, answer.proof) } : before;
    case "problem":
      return {
        made: made && { ...made, proving: false },
        problem: answer.message,
        findings: answer.findings,
        working: false,
      };
  }
}

const madeOf = ({ plan, number, carried }: AnsweredPlan, asked: PlanAsked): MadePlan => ({
  asked: carried?.asked ?? asked,
  first: asked,
  past: carried?.past,
  plan,
  reasons: [],
  number,
  proving: true,
});

const proved = (made: MadePlan, proof: Proof | undefined): MadePlan => ({
  ...made,
  plan: proof ? { ...made.plan, proof } : made.plan,
  proving: false,
});
