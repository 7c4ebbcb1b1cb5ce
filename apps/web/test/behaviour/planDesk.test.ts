import { ordinaryKitchens, type Plan } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { type PlanWorker, planDesk } from "../../src/behaviour/planDesk.js";
import type { PlanAnswer, PlanAsked, PlanRequest } from "../../src/behaviour/planMessages.js";
import { afterAnswer } from "../../src/behaviour/usePlan.js";

const asked = (from: string): PlanAsked => ({
  lots: [],
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 10 },
  from,
});
const plan = {} as Plan;

/** A worker that answers when it is told to. */
class Stand implements PlanWorker {
  onmessage: Worker["onmessage"] = null;
  onerror: Worker["onerror"] = null;
  readonly requests: PlanRequest[] = [];
  ended = false;
  postMessage(request: PlanRequest): void {
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
  const answers: [PlanAnswer["kind"], string][] = [];
  const desk = planDesk(
    () => {
      const stand = new Stand();
      stands.push(stand);
      return stand;
    },
    (answer, of) => answers.push([answer.kind, of.from]),
  );
  return { desk, stands, answers };
}

describe("the desk where plans are asked for", () => {
  it("gives each answer with what it was asked for, and keeps an idle worker", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    stands[0]!.answer({ number: 1, kind: "reasons", reasons: [] });
    desk.ask(asked("b"));
    stands[0]!.answer({ number: 2, kind: "plan", plan });
    expect(answers).toEqual([
      ["plan", "a"],
      ["reasons", "a"],
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
  it("gives no answer any more once it was told to drop it", () => {
    const { desk, stands, answers } = deskWithStands();
    desk.ask(asked("a"));
    desk.drop();
    stands[0]!.answer({ number: 1, kind: "plan", plan });
    expect(answers).toEqual([]);
  });
});

describe("what the page shows after an answer", () => {
  const before = { made: undefined, problem: undefined, working: true };
  it("keeps the last plan when the next one fails", () => {
    const made = afterAnswer(before, { number: 1, kind: "plan", plan }, asked("a"));
    const failed = afterAnswer(made, { number: 2, kind: "problem", message: "x" }, asked("b"));
    expect(failed).toMatchObject({ made: { plan, asked: { from: "a" } }, problem: "x", working: false });
  });
});
