import { describe, expect, it } from "vitest";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { construct } from "../../src/search/construct.js";
import { CrowdedAir } from "../../src/search/crowdedAir.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { descend, finish } from "../../src/search/improve.js";
import { waysOfLot } from "../../src/search/lotWays.js";
import { type Prepared, prepare } from "../../src/search/prepare.js";
import { rearrange, worthArranging } from "../../src/search/rearrange.js";
import { Search } from "../../src/search/search.js";
import { searchPlan } from "../../src/search/searchPlan.js";
import { bound, lot } from "../support.js";

/** An invented haul, far too much for the cold of the small kitchen. */
const overfull = (seed = 1, more: readonly ReturnType<typeof lot>[] = []) => ({
  ...bound(
    [
      lot("southern-pea", 500),
      lot("marjoram", 600),
      lot("chestnut", 300),
      lot("parsley", 600),
      lot("okra", 500),
      lot("pea-shoots", 800),
      lot("turnip-greens", 700),
      lot("mango", 400),
      lot("romaine", 800),
      lot("fig", 300),
      ...more,
    ],
    ordinaryKitchens.small,
    { people: 2 },
  ),
  seed,
});

function downhill(prepared: Prepared): Search {
  const start = construct(prepared, "priced");
  const search = new Search(prepared, start);
  search.crowded = new CrowdedAir(prepared, start);
  descend(search);
  finish(search);
  return search;
}

describe("lots arranged anew where the cold is short of room", () => {
  it("lead to something better where no other change does, the same each time", () => {
    const found = [0, 1].map(() => {
      const prepared = prepare(overfull());
      const search = downhill(prepared);
      const start = search.current;
      const best = rearrange(search, start);
      expect(best.objective.total).toBeLessThan(start.objective.total - 1);
      expect(evaluatePrepared(prepared, best.choice).objective.total).toBeCloseTo(best.objective.total, 9);
      return best;
    });
    expect(found[1]!.choice).toEqual(found[0]!.choice);
  });

  it("keep every portion of every lot", () => {
    const prepared = prepare(overfull());
    const search = downhill(prepared);
    const { choice } = rearrange(search, search.current);
    for (const { index, portions } of prepared.problem.lots) {
      const own = choice.parts.filter((part) => part.lot === index);
      expect(own.reduce((sum, part) => sum + part.portions, 0)).toBe(portions);
    }
  });

  it("make plans differ by less than a hundredth, whatever the seed", () => {
    const totals = [1, 2, 3, 4].map((seed) => searchPlan(prepare(overfull(seed))).objective.total);
    expect(Math.max(...totals)).toBeLessThan(1.01 * Math.min(...totals));
  });

  it("are looked for only where room is short and the lots are few", () => {
    expect(worthArranging(prepare(overfull()))).toBe(true);
    const more = Array.from({ length: 11 }, (_, number) => ({ ...lot("apple", 200), id: `apple ${number}` }));
    expect(worthArranging(prepare(overfull(1, more)))).toBe(false);
    expect(worthArranging(prepare(bound([lot("apple", 500), lot("kale", 200)])))).toBe(false);
  });
});

describe("ways for a lot to lie", () => {
  it("hold all of its portions, and the first is as it lies, for nothing", () => {
    const search = downhill(prepare(overfull()));
    for (const { index, portions } of search.prepared.problem.lots) {
      const ways = waysOfLot(search, index);
      expect(ways[0]!.cost).toBe(0);
      expect(ways[0]!.parts).toEqual(search.current.choice.parts.filter((part) => part.lot === index));
      for (const { parts } of ways) {
        expect(parts.reduce((sum, part) => sum + part.portions, 0)).toBe(portions);
      }
    }
  });
});

describe("the air of a full kitchen", () => {
  it("is damper than that of an empty one: what lies bare in the cold is hoped to cost less there", () => {
    const prepared = prepare(overfull());
    const air = new CrowdedAir(prepared, construct(prepared));
    const romaine = prepared.problem.lots.findIndex(({ commodity }) => commodity.id === "romaine");
    const bare = prepared.options(romaine).find(({ key }) => key === "0/none/never")!;
    const alone = prepared.soloCosts(romaine, bare)[0]!;
    expect(air.costs(romaine, bare)!.costLeft).toBeLessThan(alone.costLeft);
  });

  it("is asked only for cold places without a vent", () => {
    const prepared = prepare(overfull());
    const air = new CrowdedAir(prepared, construct(prepared));
    const cold = new Set(prepared.problem.places.flatMap(({ cold, index }) => (cold ? [index] : [])));
    for (const option of prepared.options(0)) {
      const last = option.programme.stays.at(-1)!.place;
      expect(air.costs(0, option) !== undefined).toBe(cold.has(last));
    }
  });
});
