import { beforeAll, describe, expect, it } from "vitest";
import { choiceOfPlan } from "../../src/explain/choiceOfPlan.js";
import { explainPlan } from "../../src/explain/explain.js";
import { addsUp } from "../../src/explain/leavingOut.js";
import type { Alternative, LotReason } from "../../src/explain/reason.js";
import type { Plan } from "../../src/problem/plan.js";
import { bindProblem, type PlanRequest } from "../../src/problem/problem.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { withProgramme } from "../../src/search/moves.js";
import { planHaul } from "../../src/search/planHaul.js";
import { randomRequest, type Size } from "../cases/randomRequest.js";

const small: Size = { lots: [2, 5], places: [2, 4], wraps: [1, 3], days: [4, 9] };
const middling: Size = { lots: [6, 10], places: [4, 8], wraps: [2, 5], days: [5, 9] };

interface Case {
  readonly asked: PlanRequest;
  readonly plan: Plan;
  readonly reasons: readonly LotReason[];
}

function explained(seed: number, size: Size): Case {
  const asked = randomRequest(seed, size);
  const plan = planHaul(asked);
  return { asked, plan, reasons: explainPlan({ ...asked, plan }) };
}

let cases: { readonly small: readonly Case[]; readonly middling: readonly Case[] };
beforeAll(() => {
  cases = {
    small: [4101, 4102, 4103, 4104, 4105, 4106].map((seed) => explained(seed, small)),
    middling: [4201, 4202, 4203, 4204].map((seed) => explained(seed, middling)),
  };
}, 120_000);
const all = (): readonly Case[] => [...cases.small, ...cases.middling];
const rivals = (reason: LotReason): Alternative[] => [...reason.elsewhere, ...reason.wraps];

const isApart = (whole: number, parts: number): boolean =>
  Math.abs(whole - parts) > Math.max(addsUp.days, addsUp.share * Math.abs(whole));

describe("why here, in any haul", () => {
  it("blame adds up to the loss, or is said to be joint", () => {
    for (const { reasons } of all()) {
      for (const { here } of reasons) {
        const { neighbours, helpers, lostToRest, lostToNeighbours, joint } = here.neighbourhood;
        const named = [...neighbours, ...helpers];
        const sum = named.reduce((total, { daysLost }) => total + daysLost.value, lostToRest.value);
        expect(isApart(lostToNeighbours.value, sum)).toBe(joint);
        for (const { daysLost, byEthylene, byVapour, jointMeans } of named)
          expect(isApart(daysLost.value, byEthylene.value + byVapour.value)).toBe(jointMeans);
      }
    }
  });

  it("loss is what the life here lacks of the life alone", () => {
    for (const { plan, reasons } of all()) {
      for (const { here, part } of reasons) {
        const { lifeAlone, lostToNeighbours } = here.neighbourhood;
        const told = plan.lots.find(({ id }) => id === part)!.life.middle;
        expect(lifeAlone.value - lostToNeighbours.value).toBeCloseTo(told, 6);
      }
    }
  });

  it("an alternative costs what the whole kitchen judged again costs more than the plan", () => {
    for (const { asked, plan, reasons } of all()) {
      const problem = bindProblem(asked);
      const choice = choiceOfPlan(problem, plan);
      const placeOf = (id: string): number => problem.places.findIndex(({ place }) => place.id === id);
      reasons.forEach((reason, part) => {
        for (const { place, wrap, ripensIn, worseBy, cost } of rivals(reason).slice(0, 2)) {
          const last = { place: placeOf(place), wrap, until: "never" as const };
          const first = ripensIn && {
            place: placeOf(ripensIn.place),
            wrap: ripensIn.wrap,
            until: "ripe" as const,
          };
          const stays = first ? [first, last] : [last];
          const changed = withProgramme(choice, part, { ...choice.parts[part]!.programme, stays });
          const { total } = evaluate(problem, changed).objective;
          expect(worseBy.value).toBeCloseTo(total - plan.objective.total, 5);
          const { waste, qualityLost, lifeLost, effort, overflow } = cost;
          expect(waste + qualityLost + lifeLost + effort + overflow).toBeCloseTo(worseBy.value, 5);
        }
      });
    }
  });

  it("nothing told is better than the plan of a small case", () => {
    for (const { reasons } of cases.small) {
      for (const reason of reasons)
        for (const { worseBy } of rivals(reason)) expect(worseBy.value).toBeGreaterThan(-1e-6);
    }
  });

  /** What is left of 0102's local optima: measured 2 % of alternatives in 40 hauls of 6 to 14 lots, one by 5 %, the rest by less than 2 % of the objective; in those here 1.9 %, by at most 0.1 %. */
  it("little is better than the plan of a larger one, and is marked", () => {
    const told = cases.middling.flatMap(({ plan, reasons }) =>
      reasons.flatMap(rivals).map((one) => ({ one, total: plan.objective.total })),
    );
    const better = told.filter(({ one }) => one.worseBy.value < -1e-6);
    expect(better.length).toBeLessThan(0.04 * told.length);
    for (const { one, total } of better) {
      expect(-one.worseBy.value).toBeLessThan(0.05 * total);
      expect(one.grounds.includes("better")).toBe(one.worseBy.value <= -1);
    }
  });
});
