import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import type { Household } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { planHaul } from "../../src/search/planHaul.js";
import { planOf } from "../../src/search/planOf.js";
import { prepare } from "../../src/search/prepare.js";

/**
 * Faults the checker has found in plans, in their smallest form. Each is marked as failing; when it is mended the mark makes
 * the test fail, and both it and `plain` in randomRequest.ts can go.
 */
function faultsOf(
  lots: object[],
  kitchen: keyof typeof ordinaryKitchens,
  household: Partial<Household> = {},
) {
  const request = {
    haul: { lots },
    kitchen: ordinaryKitchens[kitchen],
    household: { people: 1, days: 6, ...household },
    from: "2026-06-13",
    catalogue: catalogue(),
  };
  return checkPlan({ ...request, plan: planHaul(request) });
}

describe("known faults", () => {
  it("no seasonings are eaten on days away", () => {
    expect(
      faultsOf([{ id: "basil", commodity: "basil", grams: 30 }], "ordinary", { daysAway: [0, 2] }),
    ).toEqual([]);
  });

  it.fails("cut leaves are eaten after four hours in a refrigerator too warm for them", () => {
    expect(faultsOf([{ id: "leaves", commodity: "salad-leaves", grams: 300, form: "cut" }], "small")).toEqual(
      [],
    );
  });

  it.fails("cut leaves are eaten after the seventh day", () => {
    const lots = [{ id: "leaves", commodity: "romaine", grams: 1600, form: "cut" }];
    expect(faultsOf(lots, "ordinary", { days: 10 })).toEqual([]);
  });

  it.fails("days since cutting count against the life of the whole", () => {
    const lots = [{ id: "carrots", commodity: "carrot", grams: 160, form: "cut", extraDays: 3 }];
    expect(faultsOf(lots, "ordinary")).toEqual([]);
  });

  it.fails("nobody is told to dry cut produce that counts as dried", () => {
    const request = {
      haul: { lots: [{ id: "carrots", commodity: "carrot", grams: 800, form: "cut", washed: true }] },
      kitchen: ordinaryKitchens.ordinary,
      from: "2026-06-13",
      catalogue: catalogue(),
    };
    const prepared = prepare(bindProblem(request));
    const stays = [{ place: 0, wrap: "lidded box", until: "never" }] as const;
    const part = {
      lot: 0,
      portions: prepared.problem.lots[0]!.portions,
      programme: { leavesOff: false, dried: true, stays },
    };
    const plan = planOf(prepared, evaluatePrepared(prepared, { parts: [part], vents: ["half", "half"] }));
    expect(checkPlan({ ...request, plan })).toEqual([]);
  });
});
