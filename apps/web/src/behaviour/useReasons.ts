import type { LotReason, Plan } from "@keepwright/planner";
import { useEffect, useState } from "react";
import { judgeDesk } from "./judgeDesk.js";
import type { PlanAsked } from "./planMessages.js";
import { startWorker } from "./startWorker.js";

interface ReasonsFor {
  readonly asked: PlanAsked;
  readonly plan: Plan;
  readonly lot: string;
}

export interface ReasonsState {
  readonly reasons: readonly LotReason[] | undefined;
  /** Why there are none; empty where the worker stopped without a word. */
  readonly problem: string | undefined;
}

const nothing: ReasonsState = { reasons: undefined, problem: undefined };

/** Why one lot lies where it lies, beside every other place and wrap, worked out in a worker once it is wanted. */
export function useReasons({ asked, plan, lot }: ReasonsFor, wanted: boolean): ReasonsState {
  const [state, setState] = useState(nothing);
  useEffect(() => {
    setState(nothing);
    if (!wanted) return;
    const desk = judgeDesk(startWorker, (answer) => {
      if (answer.kind === "reasons") setState({ reasons: answer.reasons, problem: undefined });
      if (answer.kind === "problem") setState({ reasons: undefined, problem: answer.message });
    });
    const { proof: _, ...bare } = plan;
    desk.ask({ ...asked, kind: "reasons", plan: bare, lot });
    return desk.close;
  }, [asked, plan, lot, wanted]);
  return state;
}
