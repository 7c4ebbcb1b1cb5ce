import type { Plan } from "@keepwright/planner";
import type { PlanAnswer, PlanAsked, QuickMessage } from "./planMessages.js";
import type { WorkerPart } from "./workerPart.js";

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
export function quickDesk(start: () => WorkerPart, answered: (answer: PlanAnswer) => void): QuickDesk {
  let worker: WorkerPart | undefined;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
  };
  const post = (message: QuickMessage) => worker?.postMessage(message);
  const open = (): WorkerPart => {
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
