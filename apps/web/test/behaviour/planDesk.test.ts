import { ordinaryKitchens, type Plan, type Proof } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { planDesk } from "../../src/behaviour/planDesk.js";
import type { PlanAnswer, PlanAsked, PlanRequest, QuickMessage } from "../../src/behaviour/planMessages.js";
import { afterAnswer } from "../../src/behaviour/usePlan.js";
import type { WorkerPart } from "../../src/behaviour/workerPart.js";

const asked = (from: string): PlanAsked => ({
  lots: [],
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
  from,
});
const plan = {} as Plan;
const proof: Proof = { value: 100, bound: 90, gap: 0.1, relaxations: 24 };

/** A worker that answers when it is told to. */
class Stand implements WorkerPart {
  onmessage: Worker["onmessage"] = null;
  onerror: Worker["onerror"] = null;
  readonly requests: (PlanRequest | QuickMessage)[] = [];
  ended = false;
  postMessage(request: PlanRequest | QuickMessage): void {
    this.requests.push(request);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(data: PlanAnswer): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent);
  }
}

function deskWithStands() {
  const stands: Stand[] = [];
  const quick: Stand[] = [];
  const answers: [PlanAnswer["kind"], string][] = [];
  const opened = (list: Stand[]) => () => {
    const stand = new Stand();
    list.push(stand);
    return stand;
  };
  const desk = planDesk(opened(stands), (answer, of) => answers.push([answer.kind, of.from]), opened(quick));
  return { desk, stands, quick, answers };
}

describe("the desk where plans are asked for", () => {
  it("gives each answer with what it was asked for, and keeps an idle worker", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    stands[0]!.answer({ number: 1, kind: "reasons", reasons: [] });
    stands[0]!.answer({ number: 1, kind: "proof", proof });
    desk.ask(asked("b"));
    stands[0]!.answer({ number: 2, kind: "plan", plan });
    expect(answers).toEqual([
      ["plan", "a"],
      ["reasons", "a"],
      ["proof", "a"],
      ["plan", "b"],
    ]);
    expect(stands).toHaveLength(1);
  });
  it("lets a busy worker go when something else is asked, and never gives its late answer", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    desk.ask(asked("b"));
    expect(stands.map(({ ended }) => ended)).toEqual([true, false]);
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    stands[1]!.answer({ number: 2, kind: "plan", plan });
    expect(answers).toEqual([["plan", "b"]]);
  });
  it("lets a worker go that still looks for a proof, and never gives that proof", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    stands[0]!.answer({ number: 1, kind: "reasons", reasons: [] });
    desk.ask(asked("b"));
    expect(stands.map(({ ended }) => ended)).toEqual([true, false]);
    stands[0]!.answer({ number: 1, kind: "proof", proof });
    expect(answers).toEqual([
      ["plan", "a"],
      ["reasons", "a"],
    ]);
  });
});

describe("a worker of the desk that breaks, or that nobody waits for", () => {
  it("says nothing of a worker that breaks over the proof, but that there is none, and asks a new one the next time", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    const [first] = stands;
    first!.answer({ number: 1, kind: "plan", plan });
    first!.answer({ number: 1, kind: "reasons", reasons: [] });
    first!.onerror?.call(first as unknown as Worker, { message: "broke" } as ErrorEvent);
    expect(answers.at(-1)).toEqual(["proof", "a"]);
    desk.ask(asked("b"));
    expect(stands.map(({ ended }) => ended)).toEqual([true, false]);
  });
  it("reports a worker that breaks, and asks a new one the next time", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    const [first] = stands;
    first!.onerror?.call(first as unknown as Worker, { message: "broke" } as ErrorEvent);
    desk.ask(asked("b"));
    stands[1]!.answer({ number: 2, kind: "plan", plan });
    expect(answers).toEqual([
      ["problem", "a"],
      ["plan", "b"],
    ]);
    expect(stands[0]!.ended).toBe(true);
  });
  it("is not heard once the desk was told to drop the question", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    desk.drop();
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    expect(answers).toEqual([]);
  });
});

describe("the worker with the last plan in hand", () => {
  const asOf = (stand: Stand) =>
    stand.requests.map((one) => ("quick" in one ? [one.quick, one.asked.from] : []));
  const afterOnePlan = () => {
    const desk = deskWithStands();
    desk.desk.ask(asked("a"));
    desk.stands[0]!.answer({ number: 1, kind: "plan", plan });
    return desk;
  };
  it("comes with the first plan, takes each plan in hand, and is asked first what is asked next", () => {
    const { desk, stands, quick, answers } = afterOnePlan();
    desk.ask(asked("b"));
    quick[0]!.answer({ number: 2, kind: "meanwhile", plan });
    stands[1]!.answer({ number: 2, kind: "plan", plan });
    expect(asOf(quick[0]!)).toEqual([
      ["take in hand", "a"],
      ["ask", "b"],
      ["take in hand", "b"],
    ]);
    expect(answers).toEqual([
      ["plan", "a"],
      ["meanwhile", "b"],
      ["plan", "b"],
    ]);
  });
  it("stays when the busy one is let go", () => {
    const { desk, stands, quick } = afterOnePlan();
    for (const from of ["b", "c", "d"]) desk.ask(asked(from));
    expect(stands.map(({ ended }) => ended)).toEqual([true, true, true, false]);
    expect(quick.map(({ ended }) => ended)).toEqual([false]);
  });
  it("is not heard when the plan is there already, nor about what nobody asks any more", () => {
    const { desk, stands, quick, answers } = afterOnePlan();
    desk.ask(asked("b"));
    stands[1]!.answer({ number: 2, kind: "plan", plan });
    quick[0]!.answer({ number: 2, kind: "meanwhile", plan });
    desk.ask(asked("c"));
    quick[0]!.answer({ number: 2, kind: "meanwhile", plan });
    desk.drop();
    quick[0]!.answer({ number: 3, kind: "meanwhile", plan });
    expect(answers.map(([kind]) => kind)).toEqual(["plan", "plan"]);
  });
  it("may break without a word, and another takes the next plan in hand", () => {
    const { desk, stands, quick, answers } = afterOnePlan();
    quick[0]!.onerror?.call(quick[0] as unknown as Worker, { message: "broke" } as ErrorEvent);
    desk.ask(asked("b"));
    stands[1]!.answer({ number: 2, kind: "plan", plan });
    expect(answers.map(([kind]) => kind)).toEqual(["plan", "plan"]);
    expect(quick.map(({ ended }) => ended)).toEqual([true, false]);
    expect(asOf(quick[1]!)).toEqual([["take in hand", "b"]]);
  });
  it("goes with the desk", () => {
    const { desk, quick } = afterOnePlan();
    desk.close();
    expect(quick[0]!.ended).toBe(true);
  });
});

describe("what the page shows after an answer", () => {
  const before = { made: undefined, problem: undefined, working: true };
  it("keeps the last plan when the next one fails", () => {
    const made = afterAnswer(before, { number: 1, kind: "plan", plan }, asked("a"));
    const failed = afterAnswer(made, { number: 2, kind: "problem", message: "x" }, asked("b"));
    expect(failed).toMatchObject({ made: { plan, asked: { from: "a" } }, problem: "x", working: false });
  });
  it("shows a plan made meanwhile as one that is still being worked out", () => {
    const shown = afterAnswer(before, { number: 1, kind: "meanwhile", plan }, asked("a"));
    expect(shown).toMatchObject({ made: { plan, number: 1 }, working: true });
    expect(afterAnswer(shown, { number: 1, kind: "plan", plan }, asked("a"))).toMatchObject({
      working: false,
    });
  });
  it("puts the proof into the plan it is of, and leaves all else of it", () => {
    const made = afterAnswer(before, { number: 1, kind: "plan", plan }, asked("a"));
    expect(made.made).toMatchObject({ proving: true });
    const proved = afterAnswer(made, { number: 1, kind: "proof", proof }, asked("a"));
    expect(proved).toEqual({ ...made, made: { ...made.made, plan: { ...plan, proof }, proving: false } });
  });
  it("passes over reasons and a proof of an older question, and those that come before any plan", () => {
    const later = afterAnswer(before, { number: 2, kind: "plan", plan }, asked("b"));
    for (const state of [before, later]) {
      expect(afterAnswer(state, { number: 1, kind: "proof", proof }, asked("a"))).toBe(state);
      expect(afterAnswer(state, { number: 1, kind: "reasons", reasons: [] }, asked("a"))).toBe(state);
    }
  });
  it("keeps the plan as it is, without a word, where there is no proof", () => {
    const made = afterAnswer(before, { number: 1, kind: "plan", plan }, asked("a"));
    const without = afterAnswer(made, { number: 1, kind: "proof", proof: undefined }, asked("a"));
    expect(without).toEqual({ ...made, made: { ...made.made, proving: false } });
    expect(without.made?.plan).toBe(plan);
  });
});
