import { isCorrected } from "./corrected.js";
import type { PlanAnswer, PlanAsked } from "./planMessages.js";
import type { WorkerPart } from "./workerPart.js";

export interface Question {
  readonly asked: PlanAsked;
  readonly number: number;
}

export interface PlanningWorker {
  readonly ask: (question: Question) => void;
  /** Wants no answer any more. */
  readonly drop: () => void;
  readonly close: () => void;
}

/**
 * A worker that plans from nothing, asked one thing at a time. It is kept, since a worker that has planned before plans in a third of the time
 * (decision 0020): it ends what it is at before it takes a corrected question, and of several that wait only the last is asked. Busy with something
 * else altogether it is let go, and so is one that breaks, with its message for an answer; the next question gets a new one.
 */
export function planningWorker(
  start: () => WorkerPart,
  answered: (answer: PlanAnswer, question: Question) => void,
): PlanningWorker {
  let worker: WorkerPart | undefined;
  let busy: Question | undefined;
  let waiting: Question | undefined;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = undefined;
  };
  const send = (question: Question) => {
    worker ??= started();
    busy = question;
    waiting = undefined;
    worker.postMessage({ ...question.asked, number: question.number });
  };
  const end = (answer: PlanAnswer, question: Question) => {
    busy = undefined;
    if (waiting) send(waiting);
    answered(answer, question);
  };
  const started = (): WorkerPart => {
    const own = start();
    own.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (own === worker && data.number === busy?.number) end(data, busy);
    };
    own.onerror = ({ message }) => {
      if (own !== worker) return;
      const question = busy;
      letGo();
      if (question) end({ number: question.number, kind: "problem", message: message ?? "" }, question);
    };
    return own;
  };
  return {
    ask(question) {
      if (busy && !isCorrected(busy.asked, question.asked)) letGo();
      if (busy) waiting = question;
      else send(question);
    },
    drop() {
      waiting = undefined;
      if (busy) letGo();
    },
    close: letGo,
  };
}
