import { ground, isLast, type JudgeAnswer, type JudgeAsked } from "./judgeMessages.js";
import type { WorkerPart } from "./workerPart.js";

export interface JudgeDesk {
  /** Asks for a judgement or for improvements; an answer to anything asked before is no longer given. */
  readonly ask: (asked: JudgeAsked) => void;
  /** Wants no answer any more; what is being worked out is stopped. */
  readonly drop: () => void;
  readonly close: () => void;
}

interface Question {
  readonly asked: JudgeAsked;
  readonly number: number;
}

/** Judged beside the same plan, which the worker remembers: worth waiting for it, where a new one would have to begin again. */
const sameGround = (one: JudgeAsked, other: JudgeAsked): boolean =>
  one.kind === "judge" && other.kind === "judge" && ground(one) === ground(other);

/**
 * Hands judgements and improvements to a worker of its own, one at a time, so that neither waits for a plan. The worker ends what it is at
 * before it takes the next judgement of the same haul and kitchen, and of several that wait only the last is asked; busy with anything else it is let go
 * and a new one started. A worker that breaks is reported with its message, and the next question gets a new one.
 */
export function judgeDesk(
  start: () => WorkerPart,
  answered: (answer: JudgeAnswer, asked: JudgeAsked) => void,
): JudgeDesk {
  let worker: WorkerPart | undefined;
  let busy: Question | undefined;
  let waiting: Question | undefined;
  let number = 0;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = undefined;
    waiting = undefined;
  };
  const give = (answer: JudgeAnswer, { asked }: Question) => {
    if (answer.number === number) answered(answer, asked);
  };
  const send = (question: Question) => {
    worker ??= started();
    busy = question;
    waiting = undefined;
    worker.postMessage({ ...question.asked, number: question.number });
  };
  const started = (): WorkerPart => {
    const own = start();
    own.onmessage = ({ data }: MessageEvent<JudgeAnswer>) => {
      if (own !== worker || !busy || data.number !== busy.number) return;
      const question = busy;
      if (isLast(data)) {
        busy = undefined;
        if (waiting) send(waiting);
      }
      give(data, question);
    };
    own.onerror = (event) => {
      if (own !== worker) return;
      const question = waiting ?? busy;
      letGo();
      if (question)
        give({ number: question.number, kind: "problem", message: event.message ?? "" }, question);
    };
    return own;
  };
  return {
    ask(asked) {
      number += 1;
      const question = { asked, number };
      if (busy && sameGround(busy.asked, asked)) waiting = question;
      else {
        if (busy) letGo();
        send(question);
      }
    },
    drop() {
      number += 1;
      if (busy) letGo();
    },
    close: letGo,
  };
}
