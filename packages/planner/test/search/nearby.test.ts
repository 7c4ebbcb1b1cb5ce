import { describe, expect, it } from "vitest";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { Choice } from "../../src/problem/programme.js";
import { construct } from "../../src/search/construct.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { descend, finish } from "../../src/search/improve.js";
import { searchNearby } from "../../src/search/nearby.js";
import { prepare } from "../../src/search/prepare.js";
import { coldIsShort, roomPrices } from "../../src/search/roomPrices.js";
import { Search } from "../../src/search/search.js";
import { searchPlan } from "../../src/search/searchPlan.js";
import { bound, lot } from "../support.js";

/** An invented haul with 20 L of dill, for which the small kitchen has too little room in the cold. */
const crowded = () =>
  bound(
    [
      lot("bitter-melon", 800),
      lot("rhubarb", 500),
      lot("gai-lan", 400),
      lot("mandarin", 700),
      lot("eggplant", 300),
      lot("bok-choy", 500, { form: "cut" }),
      lot("fig", 700),
      lot("amaranth-leaf", 200),
      lot("dill", 900),
      lot("shallot", 900),
      lot("breadfruit", 200, { form: "cut" }),
      lot("brussels-sprouts", 800),
    ],
    ordinaryKitchens.small,
    { people: 2 },
  );

const roomy = () => bound([lot("apple", 500), lot("kale", 200), lot("carrot", 400)]);

describe("what a litre of a place is worth", () => {
  it("is nothing where there is room enough", () => {
    expect([...roomPrices(prepare(roomy()))].every((price) => price === 0)).toBe(true);
    expect(coldIsShort(prepare(roomy()))).toBe(false);
  });

  it("is something in all cold places that too much would rather lie in", () => {
    expect(coldIsShort(prepare(crowded()))).toBe(true);
  });

  it("makes a first arrangement better by the coupled simulation where a bulky lot is in the way of many", () => {
    const prepared = prepare(crowded());
    const totalOf = (choice: Choice): number => evaluatePrepared(prepared, choice).objective.total;
    expect(totalOf(construct(prepared, "priced"))).toBeLessThan(0.9 * totalOf(construct(prepared)));
  });
});

describe("choices nearby", () => {
  it("lead to something better where no change of one part does, the same each time", () => {
    const problem = crowded();
    const found = [0, 1].map(() => {
      const prepared = prepare({ ...problem });
      const search = new Search(prepared, construct(prepared));
      descend(search);
      finish(search);
      const start = search.current;
      const best = searchNearby(
        search,
        start,
        () => 0,
        () => {},
      );
      expect(best.objective.total).toBeLessThan(start.objective.total);
      expect(evaluatePrepared(prepared, best.choice).objective.total).toBeCloseTo(best.objective.total, 9);
      return best;
    });
    expect(found[1]!.choice).toEqual(found[0]!.choice);
  });

  it("tell how far the search has come, never back", () => {
    const told: number[] = [];
    searchPlan(prepare(crowded()), ({ done }) => told.push(done));
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });
});
