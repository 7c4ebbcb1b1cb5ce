import { handoutContext, planText, planView, unitSystems } from "@keepwright/handout";
import { endings } from "@keepwright/physics";
import { type Plan, type PlannedLot, wrapIds } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const amount = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
const kinds = [...inventedCatalogue.commodities.keys(), "unheard-of"];

const stay = (days: number) =>
  fc
    .record({ place: fc.constantFrom(...handMadePlan.places), wrap: fc.constantFrom(...wrapIds) })
    .map(({ place, wrap }) => ({
      place: place.place,
      placeKind: place.placeKind,
      wrap,
      from: addDays(handMadePlan.from, days),
      fromDay: days,
    }));

const stays = fc.oneof(
  stay(0).map((one) => [one]),
  fc
    .tuple(stay(0), stay(3), fc.constantFrom("ripe" as const, "day" as const))
    .map(([first, next, moveWhen]) => [{ ...first, to: next.from, toDay: 3, moveWhen }, next]),
);

const lot: fc.Arbitrary<PlannedLot> = fc
  .record({
    commodity: fc.constantFrom(...kinds),
    grams: fc.double({ min: 0.1, max: 200_000, noNaN: true }),
    ripeness: amount(2),
    form: fc.constantFrom("whole" as const, "cut" as const),
    tops: fc.boolean(),
    stays,
    early: amount(3650),
    ratio: fc.double({ min: 1, max: 10, noNaN: true }),
    endedBy: fc.constantFrom(...endings),
    readyOnDay: fc.option(amount(100)),
    leftPortions: fc.nat(200),
    conditions: fc.record({
      temperature: fc.double({ min: -5, max: 45, noNaN: true }),
      relativeHumidity: amount(100),
      ethylene: amount(100),
    }),
  })
  .map(({ early, ratio, ...rest }) => ({
    ...handMadePlan.lots[0]!,
    ...rest,
    life: { early, middle: early * ratio, late: early * ratio * ratio, unit: "d" as const },
  }));

describe("any plan", () => {
  it("becomes words without a hole, a missing figure or a lost lot", () => {
    fc.assert(
      fc.property(
        fc.array(lot, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(...unitSystems),
        (lots, units) => {
          const plan: Plan = {
            ...handMadePlan,
            lots: lots.map((one, index) => ({ ...one, id: `lot-${index}`, lot: `lot-${index}` })),
          };
          const context = handoutContext(inventedCatalogue, { units });
          const view = planView(context, plan);
          expect(view.lives.map((life) => life.lot).sort()).toEqual(plan.lots.map(({ id }) => id).sort());
          expect(new Set(view.lives.map(({ name }) => name.toLowerCase())).size).toBe(lots.length);
          expect(planText(context, view)).not.toMatch(/undefined|NaN|Infinity|\{|\}|∞/);
        },
      ),
      { numRuns: 200 },
    );
  });
});
