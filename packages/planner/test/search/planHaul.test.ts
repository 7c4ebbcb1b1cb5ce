import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Plan, planSchema } from "../../src/problem/plan.js";
import { planHaul } from "../../src/search/planHaul.js";
import { anyHaul, anyHousehold, anyKitchen, lot, request, smallKitchen, withPlace } from "../support.js";

const gramsOf = (plan: Plan, id: string): number =>
  plan.lots.filter((part) => part.lot === id).reduce((sum, part) => sum + part.grams, 0);

describe("planHaul, for any haul", () => {
  it("gives a valid plan that accounts for every gram and portion", () => {
    fc.assert(
      fc.property(anyHaul(5), anyKitchen, anyHousehold, (haul, kitchen, household) => {
        const plan = planHaul(request(haul.lots, kitchen, household));
        planSchema.parse(plan);
        for (const { id, grams } of haul.lots) expect(gramsOf(plan, id)).toBeCloseTo(grams, 6);
        for (const part of plan.lots) {
          const portions = part.eatOn.reduce((sum, meal) => sum + meal.portions, part.leftPortions);
          const perPortion = part.grams / portions;
          for (const meal of part.eatOn) {
            expect(meal.grams).toBeCloseTo(perPortion * meal.portions, 6);
            expect(household.daysAway).not.toContain(meal.day);
            expect(part.readyOnDay).not.toBeNull();
            expect(meal.day).toBeGreaterThanOrEqual(part.readyOnDay!);
          }
        }
        const waste = plan.lots.reduce((sum, part) => sum + part.expectedWaste.value, 0);
        expect(waste).toBeCloseTo(plan.expectedWaste.value, 6);
        const { total, ...terms } = plan.objective;
        expect(Object.values(terms).reduce((sum, term) => sum + term, 0)).toBeCloseTo(total, 6);
      }),
      { numRuns: 25, seed: 31 },
    );
  });

  it("gives the same plan for the same seed", () => {
    fc.assert(
      fc.property(anyHaul(6), anyKitchen, fc.integer(), (haul, kitchen, seed) => {
        const plan = () => JSON.stringify(planHaul(request(haul.lots, kitchen, {}, seed)));
        expect(plan()).toBe(plan());
      }),
      { numRuns: 6, seed: 32 },
    );
  });

  it("keeps to the room of every place whenever all fits", () => {
    const tight = fc.record({
      shelf: fc.integer({ min: 4, max: 12 }),
      drawer: fc.integer({ min: 3, max: 8 }),
      counter: fc.integer({ min: 3, max: 10 }),
    });
    fc.assert(
      fc.property(anyHaul(6), tight, (haul, room) => {
        let kitchen = smallKitchen();
        kitchen = withPlace(kitchen, "shelf", { litres: room.shelf });
        kitchen = withPlace(kitchen, "left-drawer", { litres: room.drawer });
        kitchen = withPlace(kitchen, "counter", { litres: room.counter });
        const asked = request(haul.lots, kitchen);
        // A part of the smallest size may be left unplaced in each place, and a box around cut produce takes half as much again.
        const litres = haul.lots.map((one) => {
          const { household } = asked.catalogue.commodities.get(one.commodity)!;
          const bare = one.grams / household.bulkDensity.value;
          const unit = Math.max(household.portion.value * 1.5, one.grams / (one.pieces ?? 1e9));
          return {
            cut: one.form === "cut",
            all: bare * (one.form === "cut" ? 1.8 : 1),
            unit: Math.min(bare, unit / household.bulkDensity.value),
          };
        });
        const slack = Math.max(...litres.map(({ unit }) => unit)) * 1.8;
        const total = litres.reduce((sum, { all }) => sum + all, 0);
        const cut = litres.reduce((sum, one) => sum + (one.cut ? one.all : 0), 0);
        fc.pre(
          total <= room.shelf + room.drawer + room.counter - 3 * slack &&
            cut <= room.shelf + room.drawer - 2 * slack,
        );
        const plan = planHaul(asked);
        expect(plan.overflow).toEqual([]);
        for (const place of plan.places) expect(place.litresTaken).toBeLessThanOrEqual(place.litres + 1e-6);
      }),
      { numRuns: 25, seed: 33 },
    );
  });

  it("tells how far it has come, without end in between", () => {
    const told: number[] = [];
    planHaul({ ...request([lot("apple", 500), lot("kale", 300)]), progress: ({ done }) => told.push(done) });
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  it("says what does not fit anywhere, and still places it", () => {
    const kitchen = withPlace(smallKitchen(), "counter", { litres: 1 });
    const plan = planHaul(request([lot("cabbage", 40_000)], kitchen));
    expect(plan.overflow.length).toBeGreaterThan(0);
    expect(gramsOf(plan, "cabbage")).toBeCloseTo(40_000, 6);
  });
});
