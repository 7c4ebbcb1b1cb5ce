import type { AskAnswer, AskRequest, KindAsked } from "./askMessages.js";
import type { WorkerPart } from "./workerPart.js";

/** Answers kept, so that going back and forth between kinds costs nothing. */
const mostKept = 60;

export interface AskDesk {
  readonly known: (asked: KindAsked) => AskAnswer | undefined;
  /** Asks, unless it is known or being worked out already; `answered` hears of every answer. */
  readonly ask: (asked: KindAsked, answered: () => void) => void;
}

/** Hands questions to one worker, which stays, and keeps what it answered. A worker that breaks is replaced at the next question. */
export function askDesk(start: () => WorkerPart): AskDesk {
  let worker: WorkerPart | undefined;
  const kept = new Map<string, AskAnswer>();
  const waiting = new Map<string, Set<() => void>>();
  const answered = (answer: AskAnswer) => {
    kept.set(answer.asked, answer);
    for (const oldest of kept.keys()) {
      if (kept.size <= mostKept) break;
      kept.delete(oldest);
    }
    const listeners = waiting.get(answer.asked) ?? [];
    waiting.delete(answer.asked);
    for (const hear of listeners) hear();
  };
  const begin = (): WorkerPart => {
    const own = start();
    own.onmessage = ({ data }: MessageEvent<AskAnswer>) => answered(data);
    own.onerror = (event) => {
      own.terminate();
      worker = undefined;
      const message = event.message ?? "";
      for (const asked of [...waiting.keys()]) answered({ asked, kind: "problem", message });
    };
    return own;
  };
  return {
    known: (asked) => kept.get(JSON.stringify(asked)),
    ask(asked, hear) {
      const text = JSON.stringify(asked);
      const before = kept.get(text);
      if (before?.kind === "asked") return;
      const listeners = waiting.get(text);
      if (listeners) {
        listeners.add(hear);
        return;
      }
      kept.delete(text);
      waiting.set(text, new Set([hear]));
      worker ??= begin();
      worker.postMessage({ kind: "ask", asked: text } satisfies AskRequest);
    },
  };
}
