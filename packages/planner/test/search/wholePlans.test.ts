import { beforeAll, describe, expect, it } from "vitest";
import type { Plan, PlannedLot } from "../../src/problem/plan.js";
import { planHaul } from "../../src/search/planHaul.js";
import { lot, request } from "../support.js";

const part = (plan: Plan, id: string): PlannedLot => plan.lots.find((one) => one.id === id)!;
const lastPlace = (plan: Plan, id: string): string => part(plan, id).stays.at(-1)!.placeKind;
const isCold = (kind: string): boolean => kind.startsWith("refrigerator") || kind === "crisper drawer";

describe("an invented market Saturday for three", () => {
  let plan: Plan;
  beforeAll(() => {
    plan = planHaul(
      request(
        [
          lot("apple", 1200),
          lot("spinach", 300),
          lot("carrot", 800, { tops: true }),
          lot("potato", 2000),
          lot("avocado", 510, { pieces: 3, ripeness: "unripe" }),
          lot("banana", 700, { ripeness: "turning" }),
          lot("strawberry", 400),
          lot("cilantro", 60),
          lot("broccoli", 500),
        ],
        undefined,
        { people: 3 },
      ),
    );
  });

  it("wastes less than everything in the refrigerator unsorted", () => {
    expect(plan.expectedWaste.value).toBeLessThan(plan.unsorted.expectedWaste.value);
    expect(plan.objective.total).toBeLessThan(plan.unsorted.objective.total);
    expect(plan.overflow).toEqual([]);
  });

  it("keeps leaves, berries and broccoli cold", () => {
    for (const id of ["spinach", "strawberry", "broccoli"]) expect(isCold(lastPlace(plan, id))).toBe(true);
  });

  it("keeps potatoes out of the refrigerator and out of the light", () => {
    expect(lastPlace(plan, "potato")).toBe("cool dark cupboard");
  });

  it("twists the leaves off carrots", () => {
    expect(part(plan, "carrot").preparation).toContain("twist off leaves");
    expect(part(plan, "carrot").tops).toBe(false);
  });

  it("lets unripe avocados ripen in the warmth", () => {
    expect(isCold(part(plan, "avocado").stays[0]!.placeKind)).toBe(false);
    expect(part(plan, "avocado").readyOnDay).toBeGreaterThan(0);
  });

  it("eats what ends soonest first", () => {
    const lastMeal = (id: string): number => Math.max(...part(plan, id).eatOn.map(({ day }) => day));
    expect(lastMeal("strawberry")).toBeLessThan(lastMeal("potato"));
    expect(lastMeal("spinach")).toBeLessThan(lastMeal("potato"));
  });
});

describe("an invented haul half of it cut", () => {
  it("refrigerates and covers everything cut, and cautions", () => {
    const plan = planHaul(
      request([
        lot("cantaloupe", 800, { form: "cut" }),
        lot("tomato", 250, { form: "cut" }),
        lot("sweet-pepper", 300, { form: "cut" }),
        lot("lemon", 200),
      ]),
    );
    for (const one of plan.lots.filter(({ form }) => form === "cut")) {
      expect(isCold(one.stays[0]!.placeKind)).toBe(true);
      expect(one.stays[0]!.wrap).not.toBe("none");
    }
    expect(plan.cautions).toContain("cut-produce");
  });
});

describe("days away", () => {
  it("are left out, and what would not last through them is eaten whole before", () => {
    const lots = [lot("strawberry", 500), lot("apple", 1000)];
    const plan = planHaul(request(lots, undefined, { people: 2, daysAway: [2, 3, 4] }));
    for (const { eatOn } of plan.lots) for (const { day } of eatOn) expect([2, 3, 4]).not.toContain(day);
    const before = (id: string): number =>
      part(plan, id).eatOn.reduce((sum, meal) => (meal.day < 2 ? sum + meal.portions : sum), 0);
    const strawberries = part(plan, "strawberry");
    const all = strawberries.eatOn.reduce((sum, meal) => sum + meal.portions, strawberries.leftPortions);
    expect(all).toBeGreaterThan(0);
    expect(before("strawberry")).toBe(all);
  });
});
