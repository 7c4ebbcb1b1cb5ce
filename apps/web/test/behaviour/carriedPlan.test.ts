import { ordinaryKitchens, planHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { carriedPlan } from "../../src/behaviour/carriedPlan.js";
import type { PlanAsked } from "../../src/behaviour/planMessages.js";
import { plannerRequest } from "../../src/behaviour/plannerRequest.js";
import { lineOfLot } from "../../src/state/lotLines.js";

const usual = { form: "whole", tops: false, washed: false, extraDays: 0 } as const;
const asked: PlanAsked = {
  lots: [
    { ...usual, id: "lot-1", commodity: "spinach", grams: 500 },
    { ...usual, id: "lot-2", commodity: "carrot", grams: 800 },
    { ...usual, id: "lot-4", commodity: "strawberry", grams: 400 },
  ],
  kitchen: ordinaryKitchens.ordinary,
  household: { people: 2, portionsPerPersonPerDay: 3, daysAway: [], days: 7 },
  from: "2026-06-13",
};
const past = planHaul(plannerRequest(asked));
const since = { on: "2026-06-15", cameHome: [], uneaten: [], unmoved: [] };
const left = (lots: readonly { readonly commodity: string; readonly grams: number }[], kind: string) =>
  lots.filter(({ commodity }) => commodity === kind).reduce((sum, { grams }) => sum + grams, 0);

describe("a plan carried on", () => {
  it("is for what is left as planned, and begins today", () => {
    const carried = carriedPlan(asked, past, since)!;
    expect(carried.plan.from).toBe("2026-06-15");
    expect(carried.plan.days).toBe(5);
    const eaten = past.lots.flatMap(({ eatOn, commodity }) => eatOn.map((meal) => ({ ...meal, commodity })));
    const [meal] = eaten.filter(({ day }) => day < 2);
    expect(left(carried.asked.lots, meal!.commodity)).toBeLessThan(left(asked.lots, meal!.commodity));
  });

  it("has what was not eaten there still", () => {
    const meal = past.lots.flatMap(({ lot, commodity, eatOn }) =>
      eatOn.filter(({ day }) => day < 2).map(({ date }) => ({ lot, commodity, date })),
    )[0]!;
    const asPlanned = carriedPlan(asked, past, since)!;
    const otherwise = carriedPlan(asked, past, { ...since, uneaten: [meal] })!;
    expect(left(otherwise.asked.lots, meal.commodity)).toBeGreaterThan(
      left(asPlanned.asked.lots, meal.commodity),
    );
  });

  it("knows the line of each lot, also of what came home since", () => {
    const cameHome = [{ ...usual, id: "lot-3", commodity: "apple", grams: 900 }];
    const carried = carriedPlan(asked, past, { ...since, cameHome })!;
    const apples = carried.asked.lots.find(({ commodity }) => commodity === "apple")!;
    expect(lineOfLot(carried.asked.lines, apples.id)).toEqual({ line: "lot-3", more: "" });
    for (const { id, carried: lay } of carried.asked.lots)
      if (lay) expect(lineOfLot(carried.asked.lines, id).line).toBe(lay.origin);
  });

  it("is nothing where nothing is left", () => {
    const one = { ...asked, lots: [{ ...usual, id: "lot-1", commodity: "strawberry", grams: 160 }] };
    const plan = planHaul(plannerRequest(one));
    const last = plan.lots.flatMap(({ eatOn, leftPortions }) => (leftPortions > 0 ? [] : eatOn)).at(-1);
    expect(last).toBeDefined();
    expect(carriedPlan(one, plan, { ...since, on: "2026-06-19" })).toBeUndefined();
  });
});

describe("moves of a plan that were not made", () => {
  // Too much fruit for the counter: some of it ripens later than the rest.
  const split: PlanAsked = {
    ...asked,
    lots: [
      { ...usual, id: "lot-1", commodity: "avocado", grams: 2400, pieces: 12, ripeness: "unripe" },
      { ...usual, id: "lot-2", commodity: "banana", grams: 2200, pieces: 14, ripeness: "turning" },
    ],
    household: { people: 3, portionsPerPersonPerDay: 4, daysAway: [], days: 12 },
  };
  const plan = planHaul(plannerRequest(split));
  const on = "2026-06-19";
  const moves = plan.lots.flatMap(({ id, lot, stays }) =>
    stays.slice(1).flatMap(({ from }, index) => (from <= on ? [{ part: id, lot, date: from, index }] : [])),
  );
  const parts = moves.filter(({ part, lot }) => part !== lot);

  it("are told part by part: the part that was not moved lies where it lay, the others as planned", () => {
    expect(parts.length).toBeGreaterThan(0);
    const { part, date, index } = parts[0]!;
    const carried = carriedPlan(split, plan, { ...since, on, unmoved: [{ lot: part, date }] })!;
    const asPlanned = carriedPlan(split, plan, { ...since, on })!;
    const liesAt = ({ asked: { lots } }: typeof carried, id: string) =>
      lots.find(({ carried: lay }) => lay?.part === id)?.carried?.place;
    const was = plan.lots.find(({ id }) => id === part)!;
    expect(liesAt(carried, part)).toBe(was.stays[index]!.place);
    for (const other of plan.lots.filter(({ id }) => id !== part))
      expect(liesAt(carried, other.id)).toBe(liesAt(asPlanned, other.id));
  });
});
