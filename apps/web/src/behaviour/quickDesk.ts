import type { Plan } from "@keepwright/planner";
import type { PlanAnswer, PlanAsked, QuickMessage } from "./planMessages.js";

/** The part of a worker that is used here, so that another can stand in for it. */
export type QuickWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

/** Where corrected questions are answered from the plan in hand. */
export interface QuickDesk {
  readonly ask: (asked: PlanAsked, number: number) => void;
  readonly takeInHand: (asked: PlanAsked, plan: Plan) => void;
  readonly close: () => void;
}

/**
 * Keeps a worker that has the last plan in hand. It is started with the first plan and never let go while it holds one; where it breaks, nobody hears
 * of it, and the next plan is taken in hand by a new one.
 */
export function quickDesk(start: () => QuickWorker, answered: (answer: PlanAnswer) => void): QuickDesk {
  let worker: QuickWorker | undefined;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
  };
  const post = (message: QuickMessage) => worker?.postMessage(message);
  const open = (): QuickWorker => {
    const opened = start();
    opened.onmessage = ({ data }: MessageEvent<PlanAnswer>) => answered(data);
    opened.onerror = letGo;
    return opened;
  };
  return {
    ask: (asked, number) => post({ quick: "ask", asked, number }),
    takeInHand(asked, plan) {
      worker ??= open();
      post({ quick: "take in hand", asked, plan });
    },
    close: letGo,
  };
}
