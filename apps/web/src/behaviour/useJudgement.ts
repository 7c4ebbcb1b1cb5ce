import type { BesideDraws, Judgement, OneMove } from "@keepwright/planner";
import { judgeDesk } from "./judgeDesk.js";
import type { JudgeAnswer, JudgeAsked, JudgementAsked } from "./judgeMessages.js";
import { startWorker } from "./startWorker.js";
import { type Asking, type AskingHow, useAsking } from "./useAsking.js";

/** A judgement with what it was asked for, so that its words never mix with what was moved since. */
export interface MadeJudgement {
  readonly asked: JudgementAsked;
  readonly judgement: Judgement;
  /** Number of the question it answers. */
  readonly number: number;
  /** The one move that helps most; undefined where none does, and until `looked`. */
  readonly oneMove: OneMove | undefined;
  readonly looked: boolean;
  /** How far the waste may go; comes last, and not where it cannot be drawn. */
  readonly draws: BesideDraws | undefined;
  /** Whether nothing more comes. */
  readonly whole: boolean;
}

export type JudgementState = Asking<MadeJudgement>;

/** Judges in a worker whenever what is asked changes. */
export const useJudgement = (ask: JudgementAsked | undefined): JudgementState => useAsking(ask, how);

const how: AskingHow<JudgeAsked, JudgeAnswer, MadeJudgement> = {
  open: (answered) => judgeDesk(startWorker, answered),
  pause: 200,
  after: afterJudgeAnswer,
};

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
      const later = { oneMove: undefined, looked: false, draws: undefined, whole: false };
      return { made: { asked, judgement, number, ...later }, problem: undefined, working: false };
    }
    case "one move":
      return made?.number === number
        ? { ...before, made: { ...made, oneMove: answer.oneMove, looked: true } }
        : before;
    case "draws":
      return made?.number === number
        ? { ...before, made: { ...made, draws: answer.draws, whole: true } }
        : before;
    case "enough":
      return made?.number === number ? { ...before, made: { ...made, whole: true } } : before;
    case "problem":
      return { made, problem: answer.message, findings: answer.findings, working: false };
    case "improving":
    case "reasons":
      return before;
  }
}
