import type { WorkerPart } from "./workerPart.js";

export interface Question<Asked> {
  readonly asked: Asked;
  readonly number: number;
}

/** What a kept worker has to be told of its questions and answers. */
export interface KeptHow<Asked, Answer> {
  readonly start: () => WorkerPart;
  /** Whether a question may wait for the one that is being answered, so that what the worker remembers of it serves it. */
  readonly mayWait: (busy: Asked, asked: Asked) => boolean;
  /** Whether no other answer follows to the same question. */
  readonly isLast: (answer: Answer) => boolean;
  /** What is answered where the worker breaks, by its message. */
  readonly broken: (number: number, message: string) => Answer;
}

export interface KeptWorker<Asked> {
  readonly ask: (question: Question<Asked>) => void;
  /** Wants no answer any more. */
  readonly drop: () => void;
  readonly close: () => void;
}

/**
 * A worker that is asked one thing at a time and kept, for what it remembers (decision 0020): it ends what it is at before it takes a question that may
 * wait, and of several that wait only the last is asked. Busy with anything else it is let go, and so is one that breaks, with its message for an
 * answer; the next question, or the one that waits, gets a new one.
 */
export function keptWorker<Asked extends object, Answer extends { readonly number: number }>(
  { start, mayWait, isLast, broken }: KeptHow<Asked, Answer>,
  answered: (answer: Answer, question: Question<Asked>) => void,
): KeptWorker<Asked> {
  let worker: WorkerPart | undefined;
  let busy: Question<Asked> | undefined;
  let waiting: Question<Asked> | undefined;
  const letGo = () => {
    worker?.terminate();
    worker = undefined;
    busy = undefined;
  };
  const send = (question: Question<Asked>) => {
    worker ??= started();
    busy = question;
    waiting = undefined;
    worker.postMessage({ ...question.asked, number: question.number });
  };
  const give = (answer: Answer, question: Question<Asked>) => {
    if (isLast(answer)) {
      busy = undefined;
      if (waiting) send(waiting);
    }
    answered(answer, question);
  };
  const started = (): WorkerPart => {
    const own = start();
    own.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (own === worker && busy && data.number === busy.number) give(data, busy);
    };
    own.onerror = ({ message }) => {
      if (own !== worker) return;
      const question = busy;
      letGo();
      if (question) give(broken(question.number, message ?? ""), question);
    };
    return own;
  };
  const drop = () => {
    waiting = undefined;
    if (busy) letGo();
  };
  return {
    ask(question) {
      if (busy && !mayWait(busy.asked, question.asked)) letGo();
      if (busy) waiting = question;
      else send(question);
    },
    drop,
    close() {
      waiting = undefined;
      letGo();
    },
  };
}
