import type { LotReason, Plan } from "@keepwright/planner";
import { useEffect, useRef, useState } from "react";
import type { PlanAnswer, PlanRequest } from "./planMessages.js";

export interface PlanState {
  readonly plan: Plan | undefined;
  readonly reasons: readonly LotReason[];
  readonly problem: string | undefined;
  readonly working: boolean;
}

/** Pause after the last change before planning again [ms], so that typing is not answered letter by letter. */
const pause = 350;

function startWorker(): Worker {
  return new Worker(new URL("./planWorker.ts", import.meta.url), { type: "module" });
}

/** Plans in a worker whenever what is asked changes; the last plan stays until the next one is there. */
export function usePlan(ask: Omit<PlanRequest, "number"> | undefined): PlanState {
  const [state, setState] = useState<PlanState>({
    plan: undefined,
    reasons: [],
    problem: undefined,
    working: false,
  });
  const worker = useRef<Worker | undefined>(undefined);
  const number = useRef(0);
  const question = ask === undefined ? undefined : JSON.stringify(ask);

  useEffect(() => () => worker.current?.terminate(), []);
  useEffect(() => {
    number.current += 1;
    const wanted = number.current;
    if (question === undefined) {
      setState({ plan: undefined, reasons: [], problem: undefined, working: false });
      return;
    }
    setState((before) => ({ ...before, working: true }));
    const timer = setTimeout(() => {
      worker.current ??= startWorker();
      worker.current.onmessage = (event: MessageEvent<PlanAnswer>) => {
        if (event.data.number === number.current) setState((before) => afterAnswer(before, event.data));
      };
      worker.current.onerror = (event) => {
        setState((before) => ({
          ...before,
          problem: event.message || "The planner stopped.",
          working: false,
        }));
        worker.current?.terminate();
        worker.current = undefined;
      };
      worker.current.postMessage({ ...JSON.parse(question), number: wanted } satisfies PlanRequest);
    }, pause);
    return () => clearTimeout(timer);
  }, [question]);
  return state;
}

function afterAnswer(before: PlanState, answer: PlanAnswer): PlanState {
  switch (answer.kind) {
    case "plan":
      return { plan: answer.plan, reasons: [], problem: undefined, working: false };
    case "reasons":
      return { ...before, reasons: answer.reasons };
    case "problem":
      return { ...before, problem: answer.message, working: false };
  }
}
