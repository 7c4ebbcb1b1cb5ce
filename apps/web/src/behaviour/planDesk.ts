import type { PlanAnswer, PlanAsked } from "./planMessages.js";

/** The part of a worker that is used here, so that another can stand in for it. */
export type PlanWorker = Pick<Worker, "postMessage" | "terminate" | "onmessage" | "onerror">;

export interface PlanDesk {
  /** Asks for a plan; an answer to anything asked before is no longer given. */
  readonly ask: (asked: PlanAsked) => void;
  /** Wants no answer any more. */
  readonly drop: () => void;
  readonly close: () => void;
}

type Answered = (answer: PlanAnswer, asked: PlanAsked) => void;

/**
 * Hands plans to be made to a worker, one at a time. A worker still busy with what nobody wants any more is let go and a
 * new one started; a worker that breaks is reported with its message, and the next question gets a new one.
 */
export function planDesk(start: () => PlanWorker, answered: Answered): PlanDesk {
  let worker: PlanWorker | undefined;
  let busy = false;
  let number = 0;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = false;
  };
  const listen = (asked: PlanAsked, own: number) => {
    if (!worker) return;
    worker.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.number !== own || own !== number) return;
      busy = data.kind === "plan";
      answered(data, asked);
    };
    worker.onerror = (event) => {
      letGo();
      if (own === number) answered({ number: own, kind: "problem", message: event.message ?? "" }, asked);
    };
  };
  return {
    ask(asked) {
      if (busy) letGo();
      worker ??= start();
      number += 1;
      busy = true;
      listen(asked, number);
      worker.postMessage({ ...asked, number });
    },
    drop() {
      number += 1;
      if (busy) letGo();
    },
    close: letGo,
  };
}
