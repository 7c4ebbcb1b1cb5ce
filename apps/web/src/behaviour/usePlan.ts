import type { LotReason, Plan } from "@keepwright/planner";
import { useCallback, useEffect, useRef, useState } from "react";
import { type PlanDesk, planDesk } from "./planDesk.js";
import type { PlanAnswer, PlanAsked } from "./planMessages.js";

/** A plan with what it was asked for, so that its words never mix with what was typed since. */
export interface MadePlan {
  readonly asked: PlanAsked;
  readonly plan: Plan;
  readonly reasons: readonly LotReason[];
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

const startWorker = () => new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module" });

/** Plans in a worker whenever what is asked changes; the last plan stays until the next one is there. */
export function usePlan(ask: PlanAsked | undefined): PlanState & { readonly again: () => void } {
  const [state, setState] = useState(nothing);
  const [attempt, setAttempt] = useState(0);
  const desk = useRef<PlanDesk | undefined>(undefined);
  const question = ask === undefined ? undefined : JSON.stringify(ask);

  useEffect(() => {
    const own = planDesk(startWorker, (answer, asked) =>
      setState((before) => afterAnswer(before, answer, asked)),
    );
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
  switch (answer.kind) {
    case "plan":
      return { made: { asked, plan: answer.plan, reasons: [] }, problem: undefined, working: false };
    case "reasons":
      return before.made ? { ...before, made: { ...before.made, reasons: answer.reasons } } : before;
    case "problem":
      return { ...before, problem: answer.message, working: false };
  }
}
