import { ground, isLast, type JudgeAnswer, type JudgeAsked } from "./judgeMessages.js";
import { keptWorker } from "./keptWorker.js";
import type { Desk } from "./useAsking.js";
import type { WorkerPart } from "./workerPart.js";

/** Judged beside the same plan, which the worker remembers: worth waiting for it, where a new one would have to begin again. */
const sameGround = (one: JudgeAsked, other: JudgeAsked): boolean =>
  one.kind === "judge" && other.kind === "judge" && ground(one) === ground(other);

/**
 * Hands judgements and improvements to a worker of its own (`keptWorker`), so that neither waits for a plan. An answer to anything asked before is no
 * longer given.
 */
export function judgeDesk(
  start: () => WorkerPart,
  answered: (answer: JudgeAnswer, asked: JudgeAsked) => void,
): Desk<JudgeAsked> {
  let number = 0;
  const worker = keptWorker<JudgeAsked, JudgeAnswer>(
    {
      start,
      mayWait: sameGround,
      isLast,
      broken: (of, message) => ({ number: of, kind: "problem", message }),
    },
    (answer, { asked }) => {
      if (answer.number === number) answered(answer, asked);
    },
  );
  return {
    ask(asked) {
      number += 1;
      worker.ask({ asked, number });
    },
    drop() {
      number += 1;
      worker.drop();
    },
    close: worker.close,
  };
}
