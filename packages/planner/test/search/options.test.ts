import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { allowedPlaces } from "../../src/rules/cutInRefrigerator.js";
import { allProgrammes } from "../../src/search/evaluateChoice.js";
import { anyHaul, anyKitchen, bound, lot, smallKitchen } from "../support.js";

describe("options", () => {
  it("leave no allowed place out, and name no other", () => {
    fc.assert(
      fc.property(anyHaul(4), anyKitchen, (haul, kitchen) => {
        const problem = bound(haul.lots, kitchen);
        const programmes = allProgrammes(problem);
        for (const one of problem.lots) {
          const lasting = new Set(programmes[one.index]!.map(({ stays }) => stays.at(-1)!.place));
          const allowed = allowedPlaces(one, problem.places).map(({ index }) => index);
          expect([...lasting].sort((a, b) => a - b)).toEqual(allowed);
        }
      }),
      { numRuns: 25, seed: 41 },
    );
  });

  it("move only what still ripens, and only once it is ripe", () => {
    const [unripe, ripe, citrus] = allProgrammes(
      bound([
        lot("avocado", 500, { id: "a", ripeness: "unripe" }),
        lot("avocado", 500, { id: "b", ripeness: "ripe" }),
        lot("orange", 500),
      ]),
    );
    expect(unripe!.some(({ stays }) => stays.length === 2)).toBe(true);
    for (const { stays } of unripe!) if (stays.length === 2) expect(stays[0]!.until).toBe("ripe");
    for (const { stays } of [...ripe!, ...citrus!]) expect(stays).toHaveLength(1);
  });

  it("keep a bare way of lying in every place, for when each litre counts", () => {
    const [apple] = allProgrammes(bound([lot("apple", 500)], smallKitchen()));
    for (const place of [0, 1, 2]) {
      expect(apple!.some(({ stays }) => stays[0]!.place === place && stays[0]!.wrap === "none")).toBe(true);
    }
  });

  it("take leaves off or leave them on, and dry what is washed or not", () => {
    const [carrot, spinach] = allProgrammes(
      bound([lot("carrot", 500, { tops: true }), lot("spinach", 300, { washed: true })]),
    );
    expect(new Set(carrot!.map(({ leavesOff }) => leavesOff))).toEqual(new Set([true, false]));
    expect(new Set(spinach!.map(({ dried }) => dried))).toEqual(new Set([true, false]));
  });
});
