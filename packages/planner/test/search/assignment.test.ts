import { seededRandom } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { cheapestAssignments, type Way } from "../../src/search/assignment.js";
import { bestPrices, priced } from "../../src/search/roomMultipliers.js";

const perLitreOver = 1000;

/** Invented: six that share the room of two places, three ways each, the first of which takes no room and costs most. */
function instance(seed: number): { readonly all: Way[][]; readonly room: number[] } {
  const random = seededRandom(seed);
  const all = Array.from({ length: 6 }, (): Way[] => {
    const litres = 1 + 4 * random();
    return [
      { cost: 20 + 30 * random(), litres: [0, 0], name: "elsewhere" },
      { cost: 10 * random(), litres: [litres, 0], name: "first" },
      { cost: 10 * random(), litres: [0, 1.2 * litres], name: "second" },
    ];
  });
  return { all, room: [4, 3 + 3 * random()] };
}

/** Every assignment of an instance with what it costs, cheapest first, by counting them all. */
function everyAssignment({ all, room }: ReturnType<typeof instance>): { cost: number; ways: number[] }[] {
  let some: number[][] = [[]];
  for (const ways of all) some = some.flatMap((before) => ways.map((_, way) => [...before, way]));
  return some
    .map((ways) => {
      const chosen = ways.map((way, index) => all[index]![way]!);
      const over = room.map((litres, place) =>
        Math.max(0, chosen.reduce((sum, way) => sum + way.litres[place]!, 0) - litres),
      );
      const cost = chosen.reduce((sum, way) => sum + way.cost, 0);
      return { ways, cost: cost + perLitreOver * over.reduce((sum, one) => sum + one, 0) };
    })
    .sort((a, b) => a.cost - b.cost);
}

const limits = { below: 1e9, perLitreOver, kept: 4, looked: 1e9 };
const seeds = [1, 2, 3, 4, 5, 6, 7, 8];

describe("the cheapest assignments to room that is short", () => {
  it.each(seeds)("are those that are found by counting all, best first (instance %i)", (seed) => {
    const { all, room } = instance(seed);
    const found = cheapestAssignments(all, room, limits);
    const every = everyAssignment({ all, room }).slice(0, limits.kept);
    expect(found.map(({ ways }) => ways)).toEqual(every.map(({ ways }) => ways));
    for (const [index, { cost }] of found.entries()) expect(cost).toBeCloseTo(every[index]!.cost, 6);
  });

  it("are none where none could cost less than is asked for", () => {
    const { all, room } = instance(1);
    const free = all.reduce((sum, ways) => sum + Math.min(...ways.map(({ cost }) => cost)), 0);
    expect(cheapestAssignments(all, room, { ...limits, below: free })).toEqual([]);
    const [best] = everyAssignment({ all, room });
    const [found] = cheapestAssignments(all, room, { ...limits, below: best!.cost + 1e-6 });
    expect(found!.ways).toEqual(best!.ways);
  });

  it("are not several that differ in little", () => {
    const alike = (cost: number): Way => ({ cost, litres: [0], name: "elsewhere" });
    const found = cheapestAssignments([[alike(2), alike(1), alike(3)]], [1], limits);
    expect(found.map(({ ways, cost }) => ({ ways, cost }))).toEqual([{ ways: [1], cost: 1 }]);
  });
});

describe("prices of room", () => {
  it.each(seeds)(
    "give a bound that no assignment costs less than, and nearly as high as any (instance %i)",
    (seed) => {
      const { all, room } = instance(seed);
      const cheapest = everyAssignment({ all, room })[0]!.cost;
      const bound = (prices: Float64Array): number =>
        all.reduce((sum, ways) => sum + Math.min(...ways.map((way) => priced(way, prices))), 0) -
        room.reduce((sum, litres, place) => sum + litres * prices[place]!, 0);
      const prices = bestPrices(all, room, cheapest, perLitreOver);
      expect(bound(prices)).toBeLessThanOrEqual(cheapest + 1e-9);
      expect(bound(prices)).toBeGreaterThan(bound(new Float64Array(room.length)));
      const grid = Array.from({ length: 41 }, (_, index) => index);
      const highest = Math.max(
        ...grid.flatMap((first) => grid.map((second) => bound(Float64Array.of(first, second)))),
      );
      expect(bound(prices)).toBeGreaterThan(0.98 * highest);
    },
  );
});
