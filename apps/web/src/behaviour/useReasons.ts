import type { LotReason, Plan } from "@keepwright/planner";
import { useMemo } from "react";
import { judgeDesk } from "./judgeDesk.js";
import type { JudgeAnswer, JudgeAsked } from "./judgeMessages.js";
import type { PlanAsked } from "./planMessages.js";
import { startWorker } from "./startWorker.js";
import { type Asking, type AskingHow, useAsking } from "./useAsking.js";

interface ReasonsFor {
  readonly asked: PlanAsked;
  readonly plan: Plan;
  readonly lot: string;
}

export interface ReasonsState {
  readonly reasons: readonly LotReason[] | undefined;
  /** Why there are none; empty where the worker stopped without a word. */
  readonly problem: string | undefined;
  readonly findings: Asking<unknown>["findings"];
}

/** Why one lot lies where it lies, beside every other place and wrap, worked out in a worker once it is wanted. */
export function useReasons({ asked, plan, lot }: ReasonsFor, wanted: boolean): ReasonsState {
  const ask = useMemo((): JudgeAsked | undefined => {
    const { proof: _, ...bare } = plan;
    return wanted ? { ...asked, kind: "reasons", plan: bare, lot } : undefined;
  }, [asked, plan, lot, wanted]);
  const { made, problem, findings, working } = useAsking(ask, how);
  return { reasons: working ? undefined : made, problem, findings };
}

const how: AskingHow<JudgeAsked, JudgeAnswer, readonly LotReason[]> = {
  open: (answered) => judgeDesk(startWorker, answered),
  pause: 0,
  after: (before, answer) => {
    if (answer.kind === "reasons") return { made: answer.reasons, problem: undefined, working: false };
    if (answer.kind === "problem")
      return { made: undefined, problem: answer.message, findings: answer.findings, working: false };
    return before;
  },
};
