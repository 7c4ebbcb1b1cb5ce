import type { PlanAnswer, PlanAsked } from "./planMessages.js";
import { quickDesk } from "./quickDesk.js";
import type { WorkerPart } from "./workerPart.js";

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
 * new one started: so a question is answered at once although the plan before it is still being proved. A worker that breaks
 * is reported with its message, and the next question gets a new one; where only the proof was missing, it stays missing.
 *
 * Beside it another worker keeps the last plan in hand and is not let go: it answers a corrected question at once, and what it answers stands until
 * the plan from nothing is there, which is the same for everybody (`quickDesk`).
 */
export function planDesk(
  start: () => WorkerPart,
  answered: Answered,
  startQuick: () => WorkerPart,
): PlanDesk {
  let worker: WorkerPart | undefined;
  let busy = false;
  let number = 0;
  /** The question that may still be answered quickly: it has no plan yet. */
  let awaited: PlanAsked | undefined;
  const quick = quickDesk(startQuick, (answer) => {
    if (answer.number === number && awaited) answered(answer, awaited);
  });
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = false;
  };
  const listen = (asked: PlanAsked, own: number) => {
    if (!worker) return;
    let proving = false;
    worker.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.number !== own || own !== number) return;
      busy = data.kind === "plan" || data.kind === "reasons";
      proving = data.kind === "reasons";
      awaited = undefined;
      if (data.kind === "plan" && !data.carried) quick.takeInHand(asked, data.plan);
      answered(data, asked);
    };
    worker.onerror = (event) => {
      letGo();
      if (own !== number) return;
      awaited = undefined;
      answered(brokenOff(own, proving, event.message), asked);
    };
  };
  return {
    ask(asked) {
      if (busy) letGo();
      worker ??= start();
      number += 1;
      busy = true;
      listen(asked, number);
      awaited = asked;
      worker.postMessage({ ...asked, number });
      // A plan carried on is no correction of one in hand.
      if (!asked.since) quick.ask(asked, number);
    },
    drop() {
      number += 1;
      awaited = undefined;
      if (busy) letGo();
    },
    close() {
      letGo();
      quick.close();
    },
  };
}

/** What is told of a worker that broke: where only the proof was missing, that there is none. */
const brokenOff = (number: number, proving: boolean, message = ""): PlanAnswer =>
  proving ? { number, kind: "proof", proof: undefined } : { number, kind: "problem", message };
