import { afterDesk } from "./afterDesk.js";
import { isCorrected } from "./corrected.js";
import { keptWorker, type Question } from "./keptWorker.js";
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

/** Starts the workers: the one that plans from nothing, the one with the last plan in hand, and the one for what follows from a plan. */
export interface PlanStarts {
  readonly plan: () => WorkerPart;
  readonly quick: () => WorkerPart;
  readonly after: () => WorkerPart;
}

/**
 * Where plans are asked for. A worker plans from nothing (`keptWorker`). Beside it another keeps the last plan in hand: it answers a corrected
 * question at once, and what it answers stands until the plan from nothing is there, which is the same for everybody (`quickDesk`). A third works out
 * what follows from a plan (`afterDesk`).
 */
export function planDesk(
  starts: PlanStarts,
  answered: (answer: PlanAnswer, asked: PlanAsked) => void,
): PlanDesk {
  let newest: Question<PlanAsked> | undefined;
  let number = 0;
  /** Whether the newest question may still be answered quickly: it has no plan yet. */
  let awaited = false;
  const give = (answer: PlanAnswer) => {
    if (answer.number === newest?.number) answered(answer, newest.asked);
  };
  const quick = quickDesk(starts.quick, (answer) => awaited && give(answer));
  const after = afterDesk(starts.after, give);
  const worker = keptWorker<PlanAsked, PlanAnswer>(
    {
      start: starts.plan,
      mayWait: isCorrected,
      isLast: () => true,
      broken: (of, message) => ({ number: of, kind: "problem", message }),
    },
    (answer, { asked, number: own }) => {
      if (own !== newest?.number) return;
      awaited = false;
      give(answer);
      if (answer.kind !== "plan") return;
      const { plan, carried } = answer;
      quick.takeInHand(asked, plan, carried);
      after.ask({ ...(carried?.asked ?? asked), number: own, plan });
    },
  );
  const drop = () => {
    newest = undefined;
    worker.drop();
    after.close();
  };
  return {
    ask(asked) {
      number += 1;
      newest = { asked, number };
      awaited = true;
      after.close();
      worker.ask(newest);
      quick.ask(asked, number);
    },
    drop,
    close() {
      drop();
      worker.close();
      quick.close();
    },
  };
}
