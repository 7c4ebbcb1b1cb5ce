import type { Finding } from "@keepwright/planner";
import { startTransition, useCallback, useEffect, useMemo, useRef, useState } from "react";

/** What came of a question asked of a worker. */
export interface Asking<Made> {
  /** The last that was made; it stays until the next is there. */
  readonly made: Made | undefined;
  /** Why nothing could be made; empty where the worker stopped without a word. */
  readonly problem: string | undefined;
  /** The same as data, where it is something that was given. */
  readonly findings?: readonly Finding[] | undefined;
  readonly working: boolean;
}

/** Hands questions to a worker. */
export interface Desk<Asked> {
  readonly ask: (asked: Asked) => void;
  /** Wants no answer any more. */
  readonly drop: () => void;
  readonly close: () => void;
}

/** How one sort of question is asked; one and the same for the life of the page. */
export interface AskingHow<Asked, Answer, Made> {
  readonly open: (answered: (answer: Answer, asked: Asked) => void) => Desk<Asked>;
  /** Pause after the last change before it is asked [ms]: several changes are often made in a row. */
  readonly pause: number;
  readonly after: (before: Asking<Made>, answer: Answer, asked: Asked) => Asking<Made>;
}

const nothing = { made: undefined, problem: undefined, working: false } as const;

/** Asks a worker whenever the question changes, or again; nothing is worked out while nothing is asked. */
export function useAsking<Asked, Answer, Made>(
  ask: Asked | undefined,
  how: AskingHow<Asked, Answer, Made>,
): Asking<Made> & { readonly again: () => void } {
  const [state, setState] = useState<Asking<Made>>(nothing);
  const [attempt, setAttempt] = useState(0);
  const desk = useRef<Desk<Asked> | undefined>(undefined);
  const question = useMemo(() => (ask === undefined ? undefined : JSON.stringify(ask)), [ask]);
  const newest = useRef(question);
  newest.current = question;

  useEffect(() => {
    const own = how.open((answer, asked) => {
      // An answer to what was asked before the last change is shown, but the work is not done with it.
      const late = JSON.stringify(asked) !== newest.current;
      // Drawing it takes its time, in which what is typed and touched goes first.
      startTransition(() =>
        setState((before) => {
          const after = how.after(before, answer, asked);
          return late ? { ...after, working: true } : after;
        }),
      );
    });
    desk.current = own;
    return own.close;
  }, [how]);
  useEffect(() => {
    if (question === undefined) {
      desk.current?.drop();
      setState(nothing);
      return;
    }
    setState((before) => ({ ...before, problem: undefined, findings: undefined, working: true }));
    const timer = setTimeout(() => desk.current?.ask(JSON.parse(question)), how.pause);
    return () => clearTimeout(timer);
  }, [question, attempt, how]);
  const again = useCallback(() => setAttempt((before) => before + 1), []);
  return useMemo(() => ({ ...state, again }), [state, again]);
}
