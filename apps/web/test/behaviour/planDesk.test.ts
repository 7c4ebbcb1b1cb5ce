import { ordinaryKitchens, type Plan, type Proof } from "@keepwright/planner";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { planDesk } from "../../src/behaviour/planDesk.js";
import type {
  AfterRequest,
  PlanAnswer,
  PlanAsked,
  PlanRequest,
  QuickAnswer,
  QuickMessage,
} from "../../src/behaviour/planMessages.js";
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

type Told = PlanRequest | AfterRequest | QuickMessage;

/** A worker that answers when it is told to. */
class Stand implements WorkerPart {
  onmessage: Worker["onmessage"] = null;
  onerror: Worker["onerror"] = null;
  readonly requests: Told[] = [];
  ended = false;
  postMessage(request: Told): void {
    this.requests.push(request);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(data: PlanAnswer | QuickAnswer): void {
    this.onmessage?.call(this as unknown as Worker, { data } as MessageEvent);
  }
  plan(number: number): void {
    this.answer({ number, kind: "plan", plan });
  }
  meanwhile(number: number): void {
    this.answer({ quick: "answer", number, plan });
  }
  break(): void {
    this.onerror?.call(this as unknown as Worker, { message: "broke" } as ErrorEvent);
  }
  /** Days of what it was asked, and for which sort of answer. */
  get asked(): string[] {
    return this.requests.map((one) => ("quick" in one ? `${one.quick} ${one.asked.from}` : one.from));
  }
}

function deskWithStands() {
  const stands = { plan: [] as Stand[], quick: [] as Stand[], after: [] as Stand[] };
  const answers: string[] = [];
  const opened = (list: Stand[]) => () => {
    const stand = new Stand();
    list.push(stand);
    return stand;
  };
  const starts = { plan: opened(stands.plan), quick: opened(stands.quick), after: opened(stands.after) };
  const desk = planDesk(starts, (answer, of) => answers.push(`${answer.kind} ${nameOf(of)}`));
  return { desk, ...stands, answers };
}

const nameOf = ({ from, household }: PlanAsked) => `${from}${household.people === 2 ? "" : household.people}`;
/** The same question but for how many eat: another altogether, as far as plans in hand go. */
const forPeople = (of: PlanAsked, people: number): PlanAsked => ({
  ...of,
  household: { ...of.household, people },
});
const lot = (id: string) => ({ id, typed: id, commodity: "apple", grams: 100 }) as PlanAsked["lots"][number];
/** A question, and others that are the same but for one thing more. */
const withLots = (count: number): PlanAsked => ({
  ...asked("a"),
  lots: Array.from({ length: count }, (_, index) => lot(`lot-${index}`)),
});
const endings = (stands: readonly Stand[]) => stands.map(({ ended }) => ended);

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe("the desk where plans are asked for", () => {
  it("gives a plan and what follows from it with what it was asked for, and keeps the worker that plans", () => {
    const { desk, plan: plans, after, answers } = deskWithStands();
    desk.ask(asked("a"));
    plans[0]!.plan(1);
    vi.runAllTimers();
    after[0]!.answer({ number: 1, kind: "reasons", reasons: [] });
    after[0]!.answer({ number: 1, kind: "proof", proof });
    desk.ask(asked("b"));
    plans[0]!.plan(2);
    expect(answers).toEqual(["plan a", "reasons a", "proof a", "plan b"]);
    expect(endings(plans)).toEqual([false]);
    expect(endings(after)).toEqual([true]);
  });
  it("has a corrected question wait for the worker, the last of several, and never gives the plan of the one before", () => {
    const { desk, plan: plans, answers } = deskWithStands();
    for (const count of [4, 5, 6]) desk.ask(withLots(count));
    expect(plans[0]!.requests).toHaveLength(1);
    plans[0]!.plan(1);
    expect(plans[0]!.requests.map((one) => "lots" in one && one.lots.length)).toEqual([4, 6]);
    expect(answers).toEqual([]);
    plans[0]!.plan(3);
    expect(answers).toEqual(["plan a"]);
    expect(endings(plans)).toEqual([false]);
  });
  it("lets a worker go that is busy with something else altogether, and never gives its late answer", () => {
    const { desk, plan: plans, answers } = deskWithStands();
    desk.ask(asked("a"));
    desk.ask(forPeople(asked("a"), 3));
    expect(endings(plans)).toEqual([true, false]);
    plans[0]!.plan(1);
    plans[1]!.plan(2);
    expect(answers).toEqual(["plan a3"]);
  });
  it("lets go of what still follows from a plan that nobody wants any more", () => {
    const { desk, plan: plans, after, answers } = deskWithStands();
    desk.ask(asked("a"));
    plans[0]!.plan(1);
    vi.runAllTimers();
    desk.ask(withLots(1));
    expect(endings(after)).toEqual([true]);
    after[0]!.answer({ number: 1, kind: "proof", proof });
    expect(answers).toEqual(["plan a"]);
  });
  it("does not ask what follows from a plan that is followed by another at once", () => {
    const { desk, plan: plans, after } = deskWithStands();
    desk.ask(withLots(1));
    plans[0]!.plan(1);
    desk.ask(withLots(2));
    vi.runAllTimers();
    expect(after).toEqual([]);
  });
});

describe("a worker of the desk that breaks, or that nobody waits for", () => {
  it("says nothing of a worker that breaks over the proof, but that there is none", () => {
    const { desk, plan: plans, after, answers } = deskWithStands();
    desk.ask(asked("a"));
    plans[0]!.plan(1);
    vi.runAllTimers();
    after[0]!.break();
    expect(answers).toEqual(["plan a", "proof a"]);
    expect(endings(after)).toEqual([true]);
  });
  it("reports a worker that breaks, and asks a new one the next time", () => {
    const { desk, plan: plans, answers } = deskWithStands();
    desk.ask(asked("a"));
    plans[0]!.break();
    desk.ask(asked("b"));
    plans[1]!.plan(2);
    expect(answers).toEqual(["problem a", "plan b"]);
    expect(endings(plans)).toEqual([true, false]);
  });
  it("asks a new one what waited for a worker that breaks, and says nothing of it", () => {
    const { desk, plan: plans, answers } = deskWithStands();
    desk.ask(withLots(4));
    desk.ask(withLots(5));
    plans[0]!.break();
    plans[1]!.plan(2);
    expect(answers).toEqual(["plan a"]);
  });
  it("is not heard once the desk was told to drop the question", () => {
    const { desk, plan: plans, answers } = deskWithStands();
    desk.ask(asked("a"));
    desk.drop();
    plans[0]!.plan(1);
    expect(answers).toEqual([]);
  });
});

describe("the worker with the last plan in hand", () => {
  const afterOnePlan = () => {
    const all = deskWithStands();
    all.desk.ask(asked("a"));
    all.plan[0]!.plan(1);
    return all;
  };
  it("comes with the first plan, takes each plan in hand, and is asked too what is asked next", () => {
    const { desk, plan: plans, quick, answers } = afterOnePlan();
    desk.ask(asked("b"));
    quick[0]!.meanwhile(2);
    plans[0]!.plan(2);
    expect(quick[0]!.asked).toEqual(["take in hand a", "ask b", "take in hand b"]);
    expect(answers).toEqual(["plan a", "meanwhile b", "plan b"]);
  });
  it("stays when the one that plans is let go, and is asked the last of several once it is free", () => {
    const { desk, plan: plans, quick } = afterOnePlan();
    for (const people of [3, 4, 5]) desk.ask(forPeople(asked("a"), people));
    expect(endings(plans)).toEqual([true, true, false]);
    expect(endings(quick)).toEqual([false]);
    expect(quick[0]!.requests).toHaveLength(2);
    quick[0]!.answer({ quick: "answer", number: 2, plan: undefined });
    expect(quick[0]!.requests.at(-1)).toMatchObject({ number: 4 });
  });
  it("is not heard when the plan is there already, nor about what nobody asks any more", () => {
    const { desk, plan: plans, quick, answers } = afterOnePlan();
    desk.ask(asked("b"));
    plans[0]!.plan(2);
    quick[0]!.meanwhile(2);
    desk.ask(asked("c"));
    quick[0]!.meanwhile(2);
    desk.drop();
    quick[0]!.meanwhile(3);
    expect(answers).toEqual(["plan a", "plan b"]);
  });
  it("may break without a word, and another takes the next plan in hand", () => {
    const { desk, plan: plans, quick, answers } = afterOnePlan();
    quick[0]!.break();
    desk.ask(asked("b"));
    plans[0]!.plan(2);
    expect(answers).toEqual(["plan a", "plan b"]);
    expect(endings(quick)).toEqual([true, false]);
    expect(quick[1]!.asked).toEqual(["take in hand b"]);
  });
  it("goes with the desk", () => {
    const { desk, plan: plans, quick } = afterOnePlan();
    desk.close();
    expect([...endings(quick), ...endings(plans)]).toEqual([true, true]);
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
