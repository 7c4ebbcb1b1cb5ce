import type { AfterRequest, PlanAnswer } from "./planMessages.js";
import type { WorkerPart } from "./workerPart.js";

/** How long a plan stands before its reasons are worked out [ms]: who types on has soon another. Declared preference, no source. */
const standing = 300;

/** Where it is asked what follows from a plan. */
export interface AfterDesk {
  readonly ask: (asked: AfterRequest) => void;
  readonly close: () => void;
}

/**
 * Has a worker of its own find the reasons for a plan and how much better it could be, so that the one that plans is free for what is asked next. It
 * is let go as soon as it is done or nobody wants to know. Where it breaks, the plan stands without.
 */
export function afterDesk(start: () => WorkerPart, answered: (answer: PlanAnswer) => void): AfterDesk {
  let worker: WorkerPart | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const close = () => {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
  };
  const begin = (asked: AfterRequest) => {
    const own = start();
    worker = own;
    own.onmessage = ({ data }: MessageEvent<PlanAnswer>) => {
      if (own !== worker) return;
      if (data.kind !== "reasons") close();
      answered(data);
    };
    own.onerror = () => {
      if (own !== worker) return;
      close();
      answered({ number: asked.number, kind: "proof", proof: undefined });
    };
    own.postMessage(asked);
  };
  return {
    ask(asked) {
      close();
      timer = setTimeout(begin, standing, asked);
    },
    close,
  };
}
