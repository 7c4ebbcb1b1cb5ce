import type { Plan } from "@keepwright/planner";
import type { Carried, PlanAnswer, PlanAsked, QuickAnswer, QuickMessage } from "./planMessages.js";
import type { WorkerPart } from "./workerPart.js";

/** Where corrected questions are answered from the plan in hand. */
export interface QuickDesk {
  readonly ask: (asked: PlanAsked, number: number) => void;
  readonly takeInHand: (asked: PlanAsked, plan: Plan, carried: Carried | undefined) => void;
  readonly close: () => void;
}

/**
 * Keeps a worker that has the last plan in hand. It is started with the first plan and never let go while it holds one; where it breaks, nobody hears
 * of it, and the next plan is taken in hand by a new one. It is asked one thing at a time, and of several that wait only the last.
 */
export function quickDesk(start: () => WorkerPart, answered: (answer: PlanAnswer) => void): QuickDesk {
  let worker: WorkerPart | undefined;
  let busy = false;
  let waiting: QuickMessage | undefined;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = false;
    waiting = undefined;
  };
  const ask = (question: QuickMessage) => {
    busy = true;
    waiting = undefined;
    worker?.postMessage(question);
  };
  const open = (): WorkerPart => {
    const opened = start();
    opened.onmessage = ({ data: { number, plan, carried } }: MessageEvent<QuickAnswer>) => {
      busy = false;
      if (waiting) ask(waiting);
      if (plan) answered({ number, kind: "meanwhile", plan, ...(carried && { carried }) });
    };
    opened.onerror = letGo;
    return opened;
  };
  return {
    ask(asked, number) {
      if (!worker) return;
      const question: QuickMessage = { quick: "ask", asked, number };
      if (busy) waiting = question;
      else ask(question);
    },
    takeInHand(asked, plan, carried) {
      worker ??= open();
      const taken: QuickMessage = { quick: "take in hand", asked, plan, ...(carried && { carried }) };
      worker.postMessage(taken);
    },
    close: letGo,
  };
}
