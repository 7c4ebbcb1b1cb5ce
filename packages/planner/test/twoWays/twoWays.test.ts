import { describe, expect, it } from "vitest";
import { arrangementOfPlan, judgeArrangement } from "../../src/arrangement/index.js";
import { carryOut } from "../../src/draws/carryOut.js";
import { drawnFigure } from "../../src/draws/drawnFigure.js";
import { mealsOfPlan } from "../../src/draws/index.js";
import { usualSpreads } from "../../src/draws/spreads.js";
import { bindProblem } from "../../src/problem/problem.js";
import { planHaul } from "../../src/search/index.js";
import { layTwoWays, type SideDay, type TwoWays, twoWaysSchema } from "../../src/twoWays/index.js";
import { lot, request, smallKitchen } from "../support.js";

/** Invented: things that lie badly in a refrigerator, on a counter, or beside each other, and more than is eaten in time. */
const lots = [
  lot("banana", 900, { pieces: 6, ripeness: "unripe" }),
  lot("apple", 1500),
  lot("broccoli", 700),
  lot("romaine", 600),
  lot("strawberry", 500),
  lot("cantaloupe", 900, { form: "cut" }),
];
const asked = request(lots, smallKitchen(), { people: 2, days: 6 });
const plan = planHaul(asked);
const drawn = layTwoWays({ ...asked, plan, draws: 30 });
const counter = layTwoWays({ ...asked, plan, habit: "counter" });

const sides = ({ evenings }: TwoWays, name: "unsorted" | "planned"): SideDay[] =>
  evenings.map((one) => one[name]);
const both = ["unsorted", "planned"] as const;

describe("a haul laid two ways", () => {
  it("is of the shape it says", () => {
    expect(() => twoWaysSchema.parse(drawn)).not.toThrow();
    expect(JSON.parse(JSON.stringify(counter))).toEqual(counter);
  });

  it("has every gram eaten, lost or left on every evening, for each lot and in all", () => {
    for (const made of [drawn, counter]) {
      for (const name of both) {
        for (const { eaten, lost, left, lots: own } of sides(made, name)) {
          expect(eaten + lost + left).toBeCloseTo(made.brought.value, 6);
          for (const one of own) {
            const brought = plan.lots.filter((part) => part.lot === one.lot);
            const grams = brought.reduce((sum, part) => sum + part.grams, 0);
            expect(one.eaten + one.lost + one.left).toBeCloseTo(grams, 6);
          }
        }
      }
    }
  });

  it("ends with the waste that the planner judges by, of each lot and in all", () => {
    for (const made of [drawn, counter]) {
      for (const name of both) {
        const last = sides(made, name).at(-1)!;
        expect(last.lost).toBeCloseTo(made[name].expectedWaste.value, 6);
        for (const one of last.lots) {
          const parts = made[name].lots.filter((part) => part.lot === one.lot);
          expect(one.lost).toBeCloseTo(
            parts.reduce((sum, part) => sum + part.expectedWaste.value, 0),
            6,
          );
        }
      }
    }
    expect(drawn.unsorted.expectedWaste.value).toBeCloseTo(plan.unsorted.expectedWaste.value, 6);
    expect(drawn.planned.lots).toEqual(plan.lots);
  });

  it("agrees with the judgement of the same way to lie, told as an arrangement", () => {
    const judgement = judgeArrangement({ ...asked, plan, arrangement: arrangementOfPlan(counter.unsorted) });
    expect(sides(counter, "unsorted").at(-1)!.lost).toBeCloseTo(judgement.wasted.yours.grams, 6);
    expect(sides(counter, "planned").at(-1)!.lost).toBeCloseTo(judgement.wasted.plan.grams, 6);
    const told = layTwoWays({ ...asked, plan, arrangement: arrangementOfPlan(counter.unsorted) });
    expect(told.rule).toBe("as told");
    expect(told.evenings.at(-1)!.unsorted.lost).toBeCloseTo(judgement.wasted.yours.grams, 6);
  });
});

describe("from evening to evening", () => {
  it("nothing eaten or lost comes back", () => {
    for (const made of [drawn, counter]) {
      for (const name of both) {
        const days = sides(made, name);
        for (const [at, { lots: own }] of days.entries()) {
          if (at === 0) continue;
          for (const [index, one] of own.entries()) {
            const before = days[at - 1]!.lots[index]!;
            expect(one.eaten).toBeGreaterThanOrEqual(before.eaten - 1e-9);
            expect(one.lost).toBeGreaterThanOrEqual(before.lost - 1e-9);
          }
        }
      }
    }
  });

  it("says where each lot lies, until nothing of it does", () => {
    for (const name of both) {
      for (const { lots: own } of sides(counter, name)) {
        for (const one of own) {
          if (one.state === "eaten") expect(one.places).toEqual([]);
          if (one.places.length === 0) expect(["eaten", "past its best"]).toContain(one.state);
          expect(one.endedBy === undefined).toBe(!["going", "past its best"].includes(one.state));
        }
      }
    }
    const lying = counter.evenings[0]!.unsorted.lots;
    expect(lying.find((one) => one.lot === "apple")!.places).toEqual(["counter"]);
    // Cut produce goes into the refrigerator whatever the habit.
    for (const place of lying.find((one) => one.lot === "cantaloupe")!.places)
      expect(place).not.toBe("counter");
  });

  it("shows lettuce on the counter gone sooner than in the refrigerator, and green bananas that are not ripe yet", () => {
    const gone = (made: TwoWays) =>
      made.evenings.find(({ unsorted }) =>
        unsorted.lots.some((one) => one.lot === "romaine" && one.state === "past its best"),
      )?.day ?? Number.POSITIVE_INFINITY;
    expect(gone(counter)).toBeLessThan(gone(drawn));
    const bananas = counter.evenings[0]!.unsorted.lots.find((one) => one.lot === "banana")!;
    expect(bananas.state).toBe("not ripe");
  });
});

describe("the ranges of the evenings", () => {
  it("end with those of the same draws carried out", () => {
    const problem = bindProblem(asked);
    const out = carryOut(problem, mealsOfPlan(problem, plan), 30, problem.seed, usualSpreads);
    const { low, high } = drawnFigure(out.wasted);
    const range = drawn.evenings.at(-1)!.planned.lostRange!;
    expect(range.low).toBeCloseTo(low, 6);
    expect(range.high).toBeCloseTo(high, 6);
  });

  it("lie about what is expected, as far as so few draws tell", () => {
    const means = drawn.evenings.flatMap(({ unsorted, planned }) => [unsorted, planned]);
    const inside = means.filter(
      ({ eaten, eatenRange }) => eaten >= eatenRange!.low - 150 && eaten <= eatenRange!.high + 150,
    );
    expect(inside.length).toBe(means.length);
  });

  it("count what is left over and good as left, never as eaten, as the figures do", () => {
    const many = request([lot("potato", 8000), lot("carrot", 900)], smallKitchen(), { people: 1, days: 4 });
    const { evenings, brought } = layTwoWays({ ...many, plan: planHaul(many), draws: 20 });
    const { eaten, eatenRange, left, leftRange } = evenings.at(-1)!.planned;
    expect(left).toBeGreaterThan(0.5 * brought.value);
    expect(leftRange!.low).toBeGreaterThan(0.5 * brought.value);
    expect(eaten).toBeLessThan(0.5 * brought.value);
    expect(eatenRange!.high).toBeLessThan(0.5 * brought.value);
  });

  it("lie in order and within what came home; without draws there are none", () => {
    for (const name of both) {
      for (const { eatenRange, lostRange, leftRange } of sides(drawn, name)) {
        for (const one of [eatenRange!, lostRange!, leftRange!]) {
          expect(one.low).toBeGreaterThanOrEqual(0);
          expect(one.high).toBeGreaterThanOrEqual(one.low);
          expect(one.high).toBeLessThanOrEqual(drawn.brought.value + 1e-6);
        }
      }
    }
    expect(counter.evenings[0]!.planned.lostRange).toBeUndefined();
    expect(counter.draws).toBeUndefined();
  });
});
