import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { presentChoice } from "../../src/carryOn/fromPresent.js";
import { choiceOfPlan } from "../../src/explain/choiceOfPlan.js";
import { bindProblem } from "../../src/problem/problem.js";
import { presentProgrammes } from "../../src/search/candidates.js";
import { evaluate } from "../../src/search/evaluateChoice.js";
import { prepare } from "../../src/search/prepare.js";
import { randomRequest } from "../cases/randomRequest.js";
import { lot, request } from "../support.js";
import { begin, faultsOf, later } from "./support.js";

const size = { lots: [2, 9], places: [2, 7], wraps: [0, 4], days: [6, 12] } as const;

const uneatenAfter = (plan: ReturnType<typeof begin>["plan"], day: number): boolean =>
  plan.lots.some(({ leftPortions, eatOn }) => leftPortions > 0 || eatOn.some((meal) => meal.day >= day));

const meals = (parts: readonly { eatOn: readonly { day: number; portions: number }[] }[]) =>
  parts.flatMap(({ eatOn }) => eatOn.map(({ day, portions }) => `${day}: ${portions}`)).sort();

describe("a plan carried on when nothing happened", () => {
  it("is the very same plan on its first day, and nothing is moved", () => {
    for (const seed of [1, 2, 9, 14]) {
      const begun = begin(randomRequest(seed, size));
      const same = later(begun, 0);
      expect(same.plan).toEqual(begun.plan);
      expect(same.changes.map(({ change }) => change)).toEqual(begun.plan.lots.map(() => "stays"));
      expect(same.vents).toEqual([]);
    }
  });

  it("is what was left of the old one in an ordinary kitchen: places, wraps, vents and meals", () => {
    const begun = begin(
      request([
        lot("apple", 1500),
        lot("avocado", 600, { pieces: 3, ripeness: "unripe" }),
        lot("kale", 300),
        lot("potato", 2000),
        lot("carrot", 900, { tops: true }),
        lot("strawberry", 450),
      ]),
    );
    const after = later(begun, 3);
    expect(after.changes.filter(({ change }) => !["stays", "gone"].includes(change))).toEqual([]);
    expect(after.vents).toEqual([]);
    for (const { lot: id, part } of after.changes.filter(({ change }) => change === "stays")) {
      const before = begun.plan.lots.find((one) => one.id === part)!;
      const rest = {
        eatOn: before.eatOn.filter(({ day }) => day >= 3).map((meal) => ({ ...meal, day: meal.day - 3 })),
      };
      expect(meals(after.plan.lots.filter((one) => one.lot === id))).toEqual(meals([rest]));
    }
    expect(faultsOf(begun, after)).toEqual([]);
  });

  it("has no fault, is no worse than left as it lies, and moves nothing that would be as well left (any haul)", () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), fc.integer({ min: 1, max: 4 }), (seed, days) => {
        const begun = begin(randomRequest(seed, size));
        fc.pre(uneatenAfter(begun.plan, days));
        const after = later(begun, days);
        expect(faultsOf(begun, after)).toEqual([]);
        const problem = bindProblem({
          ...begun.request,
          haul: after.haul,
          household: { ...after.plan.household, days: after.plan.days },
          from: after.plan.from,
        });
        const { total } = after.plan.objective;
        const left = evaluate(problem, presentChoice(prepare(problem))).objective.total;
        expect(total).toBeLessThanOrEqual(left + 1e-6);
        const choice = choiceOfPlan(problem, after.plan);
        for (const { lot: id } of after.changes.filter(({ change }) => change === "moves")) {
          const bound = problem.lots.find((one) => one.lot.id === id)!;
          const index = choice.parts.findIndex((part) => part.lot === bound.index);
          if (choice.parts.filter((part) => part.lot === bound.index).length > 1) continue;
          for (const programme of presentProgrammes(problem, bound)) {
            const parts = choice.parts.with(index, { ...choice.parts[index]!, programme });
            expect(evaluate(problem, { ...choice, parts }).objective.total).toBeGreaterThan(total);
          }
        }
      }),
      { numRuns: 10, seed: 3, endOnFailure: true },
    );
  });
});
