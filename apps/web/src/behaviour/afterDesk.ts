import { freshDesk } from "./freshDesk.js";
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
 * is let go as soon as it is done or nobody wants to know. Where it breaks, the plan stands without a proof.
 */
export function afterDesk(start: () => WorkerPart, answered: (answer: PlanAnswer) => void): AfterDesk {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let number = 0;
  const desk = freshDesk<AfterRequest, PlanAnswer>(
    {
      start,
      isLast: ({ kind }) => kind !== "reasons",
      broken: () => ({ number, kind: "proof", proof: undefined }),
    },
    answered,
  );
  const close = () => {
    clearTimeout(timer);
    desk.drop();
  };
  return {
    ask(asked) {
      close();
      number = asked.number;
      timer = setTimeout(desk.ask, standing, asked);
    },
    close,
  };
}
