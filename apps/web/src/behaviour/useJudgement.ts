import type { BesideDraws, Judgement, OneMove } from "@keepwright/planner";
import { useEffect, useRef, useState } from "react";
import { type JudgeDesk, judgeDesk } from "./judgeDesk.js";
import type { JudgeAnswer, JudgeAsked, JudgementAsked } from "./judgeMessages.js";
import { startWorker } from "./startWorker.js";

/** A judgement with what it was asked for, so that its words never mix with what was moved since. */
export interface MadeJudgement {
  readonly asked: JudgementAsked;
  readonly judgement: Judgement;
  /** Number of the question it answers. */
  readonly number: number;
  /** The one move that helps most; undefined where none does, and until `looked`. */
  readonly oneMove: OneMove | undefined;
  readonly looked: boolean;
  /** How far the waste may go; comes last. */
  readonly draws: BesideDraws | undefined;
}

export interface JudgementState {
  readonly made: MadeJudgement | undefined;
  /** Why it could not be judged; empty when the worker stopped without a word. */
  readonly problem: string | undefined;
  readonly working: boolean;
}

/** Pause after the last change before judging again [ms]: several are often made in a row. */
const pause = 200;
const nothing: JudgementState = { made: undefined, problem: undefined, working: false };

/**
 * Judges in a worker whenever what is asked changes; the last judgement stays until the next is there. Nothing is worked out while nothing
 * is asked.
 */
export function useJudgement(ask: JudgementAsked | undefined): JudgementState {
  const [state, setState] = useState(nothing);
  const desk = useRef<JudgeDesk | undefined>(undefined);
  const question = ask === undefined ? undefined : JSON.stringify(ask);

  useEffect(() => {
    const own = judgeDesk(startWorker, (answer, asked) =>
      setState((before) => afterJudgeAnswer(before, answer, asked)),
    );
    desk.current = own;
    return own.close;
  }, []);
  useEffect(() => {
    if (question === undefined) {
      desk.current?.drop();
      setState(nothing);
      return;
    }
    setState((before) => ({ ...before, problem: undefined, working: true }));
    const timer = setTimeout(() => desk.current?.ask(JSON.parse(question)), pause);
    return () => clearTimeout(timer);
  }, [question]);
  return state;
}

export function afterJudgeAnswer(
  before: JudgementState,
  answer: JudgeAnswer,
  asked: JudgeAsked,
): JudgementState {
  const { made } = before;
  const { number } = answer;
  switch (answer.kind) {
    case "judgement": {
      if (asked.kind !== "judge") return before;
      const { judgement } = answer;
      const next = { asked, judgement, number, oneMove: undefined, looked: false, draws: undefined };
      return { made: next, problem: undefined, working: false };
    }
    case "one move":
      return made?.number === number
        ? { ...before, made: { ...made, oneMove: answer.oneMove, looked: true } }
        : before;
    case "draws":
      return made?.number === number ? { ...before, made: { ...made, draws: answer.draws } } : before;
    case "problem":
      return { made, problem: answer.message, working: false };
    case "improving":
    case "reasons":
    case "enough":
      return before;
  }
}
