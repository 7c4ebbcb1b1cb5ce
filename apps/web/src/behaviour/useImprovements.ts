import type { Finding } from "@keepwright/planner";
import { useCallback, useEffect, useRef, useState } from "react";
import { judgeDesk } from "./judgeDesk.js";
import type { Improving, JudgeAnswer, JudgeAsked } from "./judgeMessages.js";
import { isLast } from "./judgeMessages.js";
import type { PlanAsked } from "./planMessages.js";
import { startWorker } from "./startWorker.js";
import type { Desk } from "./useAsking.js";

export interface ImprovementsState {
  readonly stage: "not asked" | "working" | "stopped" | "done";
  /** What is found so far, and what it was asked for. */
  readonly found: Improving | undefined;
  readonly asked: PlanAsked | undefined;
  readonly problem: string | undefined;
  readonly findings?: readonly Finding[] | undefined;
}

const nothing: ImprovementsState = {
  stage: "not asked",
  found: undefined,
  asked: undefined,
  problem: undefined,
};

/** What would help most, looked for in a worker when it is asked for; dropped when the haul or the kitchen changes. */
export function useImprovements(ask: PlanAsked | undefined) {
  const [state, setState] = useState(nothing);
  const desk = useRef<Desk<JudgeAsked> | undefined>(undefined);
  const question = ask === undefined ? undefined : JSON.stringify(ask);
  useEffect(() => {
    const own = judgeDesk(startWorker, (answer, asked) =>
      setState((before) => afterImproveAnswer(before, answer, asked)),
    );
    desk.current = own;
    return own.close;
  }, []);
  // What was found holds for one question only.
  useEffect(() => {
    desk.current?.drop();
    setState(nothing);
  }, [question]);
  const start = useCallback(() => {
    if (question === undefined) return;
    const asked: PlanAsked = JSON.parse(question);
    setState({ ...nothing, stage: "working", asked });
    desk.current?.ask({ ...asked, kind: "improve" });
  }, [question]);
  const stop = useCallback(() => {
    desk.current?.drop();
    setState((before) => ({ ...before, stage: "stopped" }));
  }, []);
  return { ...state, start, stop };
}

export function afterImproveAnswer(
  before: ImprovementsState,
  answer: JudgeAnswer,
  asked: JudgeAsked,
): ImprovementsState {
  if (answer.kind === "problem")
    return { ...before, stage: "stopped", problem: answer.message, findings: answer.findings };
  if (answer.kind !== "improving") return before;
  const stage = isLast(answer) ? "done" : "working";
  return { stage, found: answer.improving, asked, problem: undefined };
}
