import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import type { Household } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { bindProblem } from "../../src/problem/problem.js";
import type { Programme } from "../../src/problem/programme.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { planHaul } from "../../src/search/planHaul.js";
import { planOf } from "../../src/search/planOf.js";
import { prepare } from "../../src/search/prepare.js";

/** Faults the checker has found in plans, in their smallest form, each named by what was mended: they are not to come back. */
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

/** The same for a plan that holds one lot in a programme of our choosing. */
function faultsOfChosen(lot: object, programme: Programme, days = 6) {
  const request = {
    haul: { lots: [lot] },
    kitchen: ordinaryKitchens.ordinary,
    household: { days },
    from: "2026-06-13",
    catalogue: catalogue(),
  };
  const prepared = prepare(bindProblem(request));
  const part = { lot: 0, portions: prepared.problem.lots[0]!.portions, programme };
  const plan = planOf(prepared, evaluatePrepared(prepared, { parts: [part], vents: ["half", "half"] }));
  return checkPlan({ ...request, plan });
}

describe("faults once found", () => {
  it("no seasonings are eaten on days away", () => {
    expect(
      faultsOf([{ id: "basil", commodity: "basil", grams: 30 }], "ordinary", { daysAway: [0, 2] }),
    ).toEqual([]);
  });

  it("cut leaves are not eaten after four hours in a refrigerator too warm for them", () => {
    expect(faultsOf([{ id: "leaves", commodity: "salad-leaves", grams: 300, form: "cut" }], "small")).toEqual(
      [],
    );
  });

  it("cut leaves are not eaten after the seventh day", () => {
    const lots = [{ id: "leaves", commodity: "romaine", grams: 1600, form: "cut" }];
    expect(faultsOf(lots, "ordinary", { days: 10 })).toEqual([]);
  });

  it("days since cutting count against the life once cut", () => {
    const lots = [{ id: "carrots", commodity: "carrot", grams: 160, form: "cut", extraDays: 3 }];
    expect(faultsOf(lots, "ordinary")).toEqual([]);
  });

  it("cut produce that counts as dried is told to be dried", () => {
    const lot = { id: "carrots", commodity: "carrot", grams: 800, form: "cut", washed: true };
    const stays = [{ place: 0, wrap: "lidded box", until: "never" }] as const;
    expect(faultsOfChosen(lot, { leavesOff: false, dried: true, stays })).toEqual([]);
  });

  it("fruit to be moved when ripe after the planned days is told where to", () => {
    const lot = { id: "kiwis", commodity: "kiwifruit", grams: 1500, ripeness: "unripe" };
    const stays = [
      { place: 5, wrap: "none", until: "ripe" },
      { place: 0, wrap: "none", until: "never" },
    ] as const;
    expect(faultsOfChosen(lot, { leavesOff: false, dried: false, stays }, 3)).toEqual([]);
  });
});
