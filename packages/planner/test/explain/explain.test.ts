import { beforeAll, describe, expect, it } from "vitest";
import { choiceOfPlan } from "../../src/explain/choiceOfPlan.js";
import { explainLot, explainPlan } from "../../src/explain/explain.js";
import type { LotReason } from "../../src/explain/reason.js";
import type { Plan } from "../../src/problem/plan.js";
import { bindProblem } from "../../src/problem/problem.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { planHaul } from "../../src/search/planHaul.js";
import { lot, request } from "../support.js";

const lots = [
  lot("apple", 1500),
  lot("broccoli", 500),
  lot("carrot", 700, { tops: true }),
  lot("spinach", 300, { washed: true }),
  lot("avocado", 510, { pieces: 3, ripeness: "unripe" }),
];
const asked = request(lots, undefined, { people: 2 });
const problem = bindProblem(asked);
let plan: Plan;
let reasons: LotReason[];
beforeAll(() => {
  plan = planHaul(asked);
  reasons = explainPlan({ ...asked, plan });
});

describe("choiceOfPlan", () => {
  it("reads back what the plan decides: judged again, it is worth the same", () => {
    expect(evaluate(problem, choiceOfPlan(problem, plan)).objective.total).toBeCloseTo(
      plan.objective.total,
      6,
    );
  });

  it("names a lot that is not in the haul", () => {
    const other = bindProblem(request([lot("pear", 500)]));
    expect(() => choiceOfPlan(other, plan)).toThrow(/“apple”/);
  });
});

describe("explainPlan", () => {
  it("has a reason for every part, with the life the plan states", () => {
    expect(reasons.map(({ part }) => part)).toEqual(plan.lots.map(({ id }) => id));
    reasons.forEach((reason, index) => {
      expect(reason.here.life.middle).toBeCloseTo(plan.lots[index]!.life.middle, 6);
      expect(reason.here.endedBy).toBe(plan.lots[index]!.endedBy);
    });
  });

  it("compares every other place, the least bad first", () => {
    for (const { here, elsewhere } of reasons) {
      expect(new Set([here.place, ...elsewhere.map(({ place }) => place)]).size).toBe(7);
      const worse = elsewhere.map(({ worseBy }) => worseBy.value);
      expect(worse).toEqual([...worse].sort((a, b) => a - b));
    }
  });

  it("finds no single move that clearly betters the plan", () => {
    for (const { elsewhere } of reasons) {
      for (const { worseBy, tooFull } of elsewhere) if (!tooFull) expect(worseBy.value).toBeGreaterThan(-2);
    }
  });

  it("blames the apples' ethylene for what broccoli loses, if it loses any", () => {
    const { blame } = reasons.find(({ part }) => part === "broccoli")!;
    for (const { part, daysLost } of blame) {
      expect(part).not.toBe("broccoli");
      expect(daysLost.value).toBeGreaterThan(0);
    }
    const shares = blame.reduce((sum, { share }) => sum + share, 0);
    if (blame.length > 0) expect(shares).toBeCloseTo(1, 9);
  });
});

describe("explainLot", () => {
  it("says for one part what explainPlan says", () => {
    expect(explainLot(problem, plan, "carrot")).toEqual(reasons.find(({ part }) => part === "carrot"));
  });

  it("names a part that is not in the plan", () => {
    expect(() => explainLot(problem, plan, "moon")).toThrow(/“moon”.*apple/);
  });
});
