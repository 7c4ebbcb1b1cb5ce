import { beforeAll, describe, expect, it } from "vitest";
import { choiceOfPlan } from "../../src/explain/choiceOfPlan.js";
import { explainLot, explainNamed, explainPlan } from "../../src/explain/explain.js";
import { type LotReason, lotReasonSchema } from "../../src/explain/reason.js";
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

  it("compares the nearest rivals, the least bad first, other places and other wraps", () => {
    for (const { here, elsewhere, wraps } of reasons) {
      expect(elsewhere).toHaveLength(3);
      expect(wraps).toHaveLength(2);
      for (const { place, ripensIn } of elsewhere)
        expect([place, ripensIn !== undefined]).not.toEqual([here.place, here.ripensIn !== undefined]);
      for (const { place, wrap, ripensIn } of wraps) {
        expect(place).toBe(here.place);
        expect([wrap, ripensIn?.wrap]).not.toEqual([here.wrap, here.ripensIn?.wrap]);
      }
      for (const list of [elsewhere, wraps]) {
        const worse = list.map(({ worseBy }) => worseBy.value);
        expect(worse).toEqual([...worse].sort((a, b) => a - b));
      }
    }
  });

  it("has the course of each day, here and in the nearest rivals", () => {
    for (const { here, elsewhere, wraps } of reasons) {
      for (const { course } of [here, elsewhere[0]!, wraps[0]!]) {
        for (const series of Object.values(course!)) expect(series).toHaveLength(problem.household.days + 1);
        for (const one of [...course!.quality, ...course!.lifeUsed]) expect(one >= 0 && one <= 1).toBe(true);
        expect(course!.lifeUsed).toEqual([...course!.lifeUsed].sort((a, b) => a - b));
      }
      for (const { course } of elsewhere.slice(1)) expect(course).toBeUndefined();
    }
  });

  it("has the share of life used reach 1 just where the life ends", () => {
    for (const { here } of reasons) {
      here.course!.lifeUsed.forEach((used, day) => {
        if (day < here.life.middle - 0.25) expect(used).toBeLessThan(1);
        if (day >= here.life.middle) expect(used).toBe(1);
      });
    }
  });

  it("says which rules left something out, and where they are from", () => {
    const cut = request([lot("cantaloupe", 600, { form: "cut" }), lot("banana", 600)]);
    const [melon, banana] = explainPlan({ ...cut, plan: planHaul(cut) });
    const counter = melon!.ruledOut.find(({ place }) => place === "counter")!;
    expect(counter).toMatchObject({
      rule: "cut out of refrigerator",
      evidence: { source: "cdc-produce-safety" },
    });
    expect(melon!.ruledOut).toContainEqual({ wrap: "none", rule: "cut uncovered" });
    expect(banana!.ruledOut).toContainEqual({ wrap: "lidded box", rule: "must breathe" });
  });

  it("has a schema that what it gives keeps to", () => {
    for (const reason of reasons) expect(lotReasonSchema.parse(reason)).toEqual(reason);
  });
});

describe("explainLot", () => {
  it("says for one part what explainPlan says, of every place and wrap, and of neighbours there", () => {
    const short = reasons.find(({ part }) => part === "carrot")!;
    const all = explainLot(problem, plan, "carrot");
    expect(all.here).toEqual(short.here);
    expect(new Set([all.here.place, ...all.elsewhere.map(({ place }) => place)]).size).toBe(
      problem.places.length,
    );
    for (const one of short.elsewhere)
      expect(all.elsewhere).toContainEqual(
        expect.objectContaining({ place: one.place, wrap: one.wrap, worseBy: one.worseBy, cost: one.cost }),
      );
    for (const { neighbourhood, lostToNeighbours } of all.elsewhere)
      expect(neighbourhood!.lostToNeighbours.value).toBeCloseTo(lostToNeighbours.value, 9);
  });

  it("names a part that is not in the plan", () => {
    expect(() => explainLot(problem, plan, "moon")).toThrow(/“moon”.*apple/);
  });
});

describe("explainNamed", () => {
  it("takes a lot by its kind, and names lots that are there where it is not", () => {
    expect(explainNamed({ ...asked, plan, lot: "carrots" })).toEqual([explainLot(problem, plan, "carrot")]);
    expect(() => explainNamed({ ...asked, plan, lot: "moon" })).toThrow(/lot "moon".*apple/);
  });
});
