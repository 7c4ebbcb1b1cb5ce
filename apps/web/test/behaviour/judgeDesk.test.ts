import { type BesideDraws, type Judgement, ordinaryKitchens } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { judgeDesk } from "../../src/behaviour/judgeDesk.js";
import type {
  ImprovementsAsked,
  JudgeAnswer,
  JudgementAsked,
  JudgeRequest,
} from "../../src/behaviour/judgeMessages.js";
import { afterJudgeAnswer } from "../../src/behaviour/useJudgement.js";
import type { WorkerPart } from "../../src/behaviour/workerPart.js";

const about = {
  lots: [],
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
};
/** A question about a day, with a lot in a place by which its answers are told apart. */
const judge = (from: string, place: string): JudgementAsked => ({
  ...about,
  kind: "judge",
  from,
  arrangement: { version: 1, lots: [{ lot: "lot-1", place, wrap: "none", done: [] }], vents: [] },
});
const improve = (from: string): ImprovementsAsked => ({ ...about, kind: "improve", from });
const judgement = {} as Judgement;

/** A worker that answers when it is told to. */
class Stand implements WorkerPart {
  onmessage: Worker["onmessage"] = null;
  onerror: Worker["onerror"] = null;
  readonly requests: JudgeRequest[] = [];
  ended = false;
  postMessage(request: JudgeRequest): void {
    this.requests.push(request);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(data: JudgeAnswer): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent);
  }
  /** All answers to a judgement. */
  judged(number: number): void {
    this.answer({ number, kind: "judgement", judgement });
    this.answer({ number, kind: "one move", oneMove: undefined });
    this.answer({ number, kind: "draws", draws: {} as BesideDraws });
  }
  breaks(message: string): void {
    this.onerror?.call(this as unknown as Worker, { message } as ErrorEvent);
  }
}

/** Where the first lot of a question lies, or "improve". */
const told = (asked: JudgementAsked | ImprovementsAsked): string =>
  asked.kind === "judge" ? asked.arrangement.lots[0]!.place : asked.kind;

function deskWithStands() {
  const stands: Stand[] = [];
  const answers: string[] = [];
  const desk = judgeDesk(
    () => {
      const stand = new Stand();
      stands.push(stand);
      return stand;
    },
    (answer, asked) => answers.push(`${answer.kind}: ${told(asked)}`),
  );
  return { desk, stands, answers };
}

describe("the desk where judgements are asked for", () => {
  it("gives each answer with what it was asked for, and keeps an idle worker with the plan it remembers", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(judge("a", "shelf"));
    stands[0]!.judged(1);
    desk.ask(judge("a", "counter"));
    stands[0]!.judged(2);
    expect(answers).toEqual([
      "judgement: shelf",
      "one move: shelf",
      "draws: shelf",
      "judgement: counter",
      "one move: counter",
      "draws: counter",
    ]);
    expect(stands).toHaveLength(1);
  });
  it("waits for the worker where only a lot was moved, and asks only the last of what waits", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(judge("a", "shelf"));
    desk.ask(judge("a", "counter"));
    desk.ask(judge("a", "cellar"));
    expect(stands[0]!.requests.map(told)).toEqual(["shelf"]);
    stands[0]!.judged(1);
    expect(stands[0]!.requests.map(told)).toEqual(["shelf", "cellar"]);
    expect(answers).toEqual([]);
    stands[0]!.judged(3);
    expect(answers).toEqual(["judgement: cellar", "one move: cellar", "draws: cellar"]);
    expect(stands[0]!.ended).toBe(false);
  });
  it("lets a busy worker go when the haul or the kitchen changes, and never gives its late answer", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(judge("a", "shelf"));
    desk.ask(judge("a", "counter"));
    desk.ask(judge("b", "cellar"));
    expect(stands.map(({ ended }) => ended)).toEqual([true, false]);
    stands[0]!.judged(1);
    stands[1]!.judged(3);
    expect(stands[1]!.requests.map(told)).toEqual(["cellar"]);
    expect(answers).toEqual(["judgement: cellar", "one move: cellar", "draws: cellar"]);
  });
  it("lets a worker go that looks for improvements, whatever is asked then", () => {
    const { desk, stands } = deskWithStands();
    desk.ask(improve("a"));
    desk.ask(improve("a"));
    desk.ask(judge("a", "shelf"));
    expect(stands.map(({ ended }) => ended)).toEqual([true, true, false]);
  });
  it("gives improvements one after another, and stops them for good when they are dropped", () => {
    const { desk, stands, answers } = deskWithStands();
    const step = (tried: number): JudgeAnswer => {
      const improving = { step: { improvements: {}, tried, of: 9 }, kitchens: [] } as unknown;
      return { number: 1, kind: "improving", improving } as JudgeAnswer;
    };
    desk.ask(improve("a"));
    stands[0]!.answer(step(0));
    stands[0]!.answer(step(1));
    desk.drop();
    stands[0]!.answer(step(2));
    expect(answers).toEqual(["improving: improve", "improving: improve"]);
    expect(stands[0]!.ended).toBe(true);
  });
  it("keeps the worker when an answer is no longer wanted that has already come", () => {
    const { desk, stands } = deskWithStands();
    desk.ask(judge("a", "shelf"));
    stands[0]!.judged(1);
    desk.drop();
    desk.ask(judge("a", "counter"));
    expect(stands.map(({ ended }) => ended)).toEqual([false]);
  });
  it("asks a new one what waited for a worker that breaks, and reports one that breaks with what is wanted now", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(judge("a", "shelf"));
    desk.ask(judge("a", "counter"));
    stands[0]!.breaks("broke");
    expect(answers).toEqual([]);
    expect(stands[1]!.requests.map(({ number }) => number)).toEqual([2]);
    stands[1]!.breaks("broke too");
    expect(answers).toEqual(["problem: counter"]);
    desk.ask(judge("a", "cellar"));
    stands[2]!.judged(3);
    expect(answers.slice(1)).toEqual(["judgement: cellar", "one move: cellar", "draws: cellar"]);
    expect(stands[0]!.ended).toBe(true);
  });
});

describe("what the page shows after an answer to a judgement", () => {
  const before = { made: undefined, problem: undefined, working: true };
  const asked = judge("a", "shelf");
  it("keeps the last judgement when the next one fails", () => {
    const made = afterJudgeAnswer(before, { number: 1, kind: "judgement", judgement }, asked);
    const failed = afterJudgeAnswer(made, { number: 2, kind: "problem", message: "x" }, judge("a", "door"));
    expect(failed).toMatchObject({ made: { judgement, asked }, problem: "x", working: false });
  });
  it("passes over a move that belongs to an older judgement", () => {
    const made = afterJudgeAnswer(before, { number: 2, kind: "judgement", judgement }, asked);
    expect(afterJudgeAnswer(made, { number: 1, kind: "one move", oneMove: undefined }, asked)).toBe(made);
    const own = afterJudgeAnswer(made, { number: 2, kind: "one move", oneMove: undefined }, asked);
    expect(own.made?.looked).toBe(true);
  });
});
