import type { Desk } from "./useAsking.js";
import type { WorkerPart } from "./workerPart.js";

interface FreshHow<Answer> {
  readonly start: () => WorkerPart;
  /** Whether no other answer follows. */
  readonly isLast: (answer: Answer) => boolean;
  /** What is answered where the worker breaks, by its message. */
  readonly broken: (message: string) => Answer;
}

/** Gives each question a worker of its own, which is let go with its last answer, or when something else is asked or nothing is wanted any more. */
export function freshDesk<Asked, Answer>(
  { start, isLast, broken }: FreshHow<Answer>,
  answered: (answer: Answer, asked: Asked) => void,
): Desk<Asked> {
  let worker: WorkerPart | undefined;
  const drop = () => {
    worker?.terminate();
    worker = undefined;
  };
  return {
    ask(asked) {
      drop();
      const own = start();
      worker = own;
      const give = (answer: Answer) => {
        if (own !== worker) return;
        if (isLast(answer)) drop();
        answered(answer, asked);
      };
      own.onmessage = ({ data }: MessageEvent<Answer>) => give(data);
      own.onerror = ({ message }) => give(broken(message ?? ""));
      own.postMessage(asked);
    },
    drop,
    close: drop,
  };
}
