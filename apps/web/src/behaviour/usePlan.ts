import type { LotReason, Plan, Proof } from "@keepwright/planner";
import { useCallback, useEffect, useRef, useState } from "react";
import { type PlanDesk, planDesk } from "./planDesk.js";
import type { PlanAnswer, PlanAsked } from "./planMessages.js";
import { startWorker } from "./startWorker.js";

/** A plan with what it was asked for, so that its words never mix with what was typed since. */
export interface MadePlan {
  readonly asked: PlanAsked;
  readonly plan: Plan;
  readonly reasons: readonly LotReason[];
  /** Number of the question it answers: what comes later for another one does not belong to it. */
  readonly number: number;
  /** True until it is known how much better it could be, or that this stays unknown. */
  readonly proving: boolean;
}

export interface PlanState {
  readonly made: MadePlan | undefined;
  /** Why no plan could be made; empty when the planner stopped without a word. */
  readonly problem: string | undefined;
  readonly working: boolean;
}

/** Pause after the last change before planning again [ms], so that typing is not answered letter by letter. */
const pause = 350;
const nothing: PlanState = { made: undefined, problem: undefined, working: false };

/** Plans in a worker whenever what is asked changes; the last plan stays until the next one is there. */
export function usePlan(ask: PlanAsked | undefined): PlanState & { readonly again: () => void } {
  const [state, setState] = useState(nothing);
  const [attempt, setAttempt] = useState(0);
  const desk = useRef<PlanDesk | undefined>(undefined);
  const question = ask === undefined ? undefined : JSON.stringify(ask);
  const newest = useRef(question);
  newest.current = question;

  useEffect(() => {
    const answered = (answer: PlanAnswer, asked: PlanAsked) =>
      setState((before) => {
        const after = afterAnswer(before, answer, asked);
        // An answer to what was asked before the last change is shown, but the work is not done with it.
        return JSON.stringify(asked) === newest.current ? after : { ...after, working: true };
      });
    const own = planDesk(startWorker, answered, startWorker);
    desk.current = own;
    return own.close;
  }, []);
  useEffect(() => {
    if (question === undefined) {
      desk.current?.drop();
      setState(nothing);
      return;
    }
    setState((before) => ({ ...before, problem: undefined, working: true }));
    const timer = setTimeout(() => desk.current?.ask(JSON.parse(question)), pause);
    return () => clearTimeout(timer);
  }, [question, attempt]);
  const again = useCallback(() => setAttempt((before) => before + 1), []);
  return { ...state, again };
}

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
      return { made: made && { ...made, proving: false }, problem: answer.message, working: false };
  }
}

const madeOf = ({ plan, number }: { plan: Plan; number: number }, asked: PlanAsked): MadePlan => ({
  asked,
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
