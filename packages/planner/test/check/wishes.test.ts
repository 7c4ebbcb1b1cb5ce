import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import type { Plan } from "../../src/problem/plan.js";
import { planHaul } from "../../src/search/planHaul.js";

const { ordinary } = ordinaryKitchens;
const kitchen = {
  ...ordinary,
  places: ordinary.places.filter(({ id }) => ["shelf", "counter"].includes(id)),
};
const request = {
  haul: {
    lots: [
      {
        id: "soon",
        commodity: "avocado",
        grams: 300,
        pieces: 2,
        ripeness: "turning",
        wanted: { when: "by", day: "tuesday" },
      },
      {
        id: "late",
        commodity: "pear",
        grams: 540,
        pieces: 3,
        ripeness: "turning",
        wanted: { when: "on", day: 6 },
      },
      { id: "salad", commodity: "romaine", grams: 400, wanted: { when: "after", day: "2026-06-15" } },
      { id: "free", commodity: "banana", grams: 450 },
    ],
  },
  kitchen,
  household: { people: 2, portionsPerPersonPerDay: 5, daysAway: [], days: 7 },
  from: "2026-06-13",
  catalogue: catalogue(),
};
const plan = planHaul(request);
const wishOf = (changed: Plan, lot: string) => changed.lots.find((part) => part.lot === lot)!.wish!;

describe("the checker and what is wanted for a day", () => {
  it("finds nothing wrong with a plan that tells its wishes, and the days they are for", () => {
    expect(checkPlan({ ...request, plan })).toEqual([]);
    expect(["soon", "late", "salad"].map((lot) => wishOf(plan, lot).date)).toEqual([
      "2026-06-16",
      "2026-06-19",
      "2026-06-15",
    ]);
    expect(plan.lots.find(({ lot }) => lot === "free")!.wish).toBeUndefined();
  });

  const spoilt: [string, string, (changed: Plan) => void][] = [
    [
      "wish",
      "another day",
      (changed) => Object.assign(wishOf(changed, "soon"), { day: 4, date: "2026-06-17" }),
    ],
    ["wish", "another date", (changed) => Object.assign(wishOf(changed, "soon"), { date: "2026-06-17" })],
    ["wish", "another word", (changed) => Object.assign(wishOf(changed, "late"), { when: "by" })],
    ["wish", "a better chance", (changed) => Object.assign(wishOf(changed, "late"), { chance: 0.99 })],
    ["wish", "missed where it is met", (changed) => Object.assign(wishOf(changed, "salad"), { met: false })],
    [
      "wish",
      "a reason where there is none to give",
      (changed) => Object.assign(wishOf(changed, "salad"), { why: "keeps too short" }),
    ],
    ["wish", "a lettuce that ripens", (changed) => Object.assign(wishOf(changed, "salad"), { ripens: true })],
    ["wish", "no wish", (changed) => delete changed.lots.find(({ lot }) => lot === "soon")!.wish],
    [
      "wish",
      "a wish of nobody",
      (changed) =>
        Object.assign(changed.lots.find(({ lot }) => lot === "free")!, { wish: wishOf(changed, "salad") }),
    ],
    ["objective", "a cheaper miss", (changed) => Object.assign(changed.objective, { wishesMissed: 0 })],
    [
      "replayed wish",
      "ready in less varied time",
      (changed) => {
        const { ready } = wishOf(changed, "late");
        Object.assign(ready!, {
          early: ready!.middle - (ready!.middle - ready!.early) / 3,
          late: ready!.middle + (ready!.late - ready!.middle) / 3,
        });
      },
    ],
    [
      "replayed wish",
      "ready a day early",
      (changed) => {
        const { ready } = wishOf(changed, "late");
        Object.assign(ready!, { early: ready!.early - 1, middle: ready!.middle - 1, late: ready!.late - 1 });
      },
    ],
  ];
  it.each(spoilt)("%s: notices %s", (rule, _, change) => {
    const changed = structuredClone(plan);
    change(changed);
    expect(checkPlan({ ...request, plan: changed }).map((fault) => fault.rule)).toContain(rule);
  });
});
