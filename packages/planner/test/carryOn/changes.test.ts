import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CarriedOn } from "../../src/carryOn/index.js";
import { HappenedError } from "../../src/problem/inputError.js";
import { randomRequest } from "../cases/randomRequest.js";
import { lot, request } from "../support.js";
import { anyAccount } from "./anyAccount.js";
import { begin, later } from "./support.js";

const size = { lots: [2, 4], places: [2, 3], wraps: [1, 2], days: [5, 6] } as const;

/** Lots of a carried-on plan all of which may no longer be eaten. */
const pastLots = ({ plan, haul }: CarriedOn): string[] =>
  haul.lots
    .map(({ id }) => id)
    .filter((id) => plan.lots.every((part) => part.lot !== id || part.safeUntil === "past"));

/** An invented plan, its first lot cut on arrival, carried on, whatever happened; undefined where nothing is left or the account cannot have been. */
function carriedOn(seed: number, days: number): CarriedOn | undefined {
  const drawn = randomRequest(seed, size);
  const [{ ripeness: _, ...cut }, ...rest] = drawn.haul.lots;
  const random = { ...drawn, haul: { lots: [{ ...cut, form: "cut", tops: false }, ...rest] } };
  const begun = begin(random);
  try {
    return later(begun, days, anyAccount(seed, begun.plan, random.kitchen), { days: 4 });
  } catch (error) {
    if (error instanceof HappenedError) return undefined;
    throw error;
  }
}

describe("what became of each lot", () => {
  it("is told once, and of what may no longer be eaten nothing else than that it is thrown away (any haul)", () => {
    let [all, past] = [0, 0];
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), fc.integer({ min: 2, max: 7 }), (seed, days) => {
        const told = carriedOn(seed, days);
        if (!told) return;
        const lots = told.changes.flatMap(({ lot: id }) => id ?? []);
        expect(lots.toSorted()).toEqual(told.haul.lots.map(({ id }) => id).toSorted());
        const away = told.changes.filter(({ change }) => change === "throw away");
        expect(away.map(({ lot: id }) => id).toSorted()).toEqual(pastLots(told).toSorted());
        for (const { lot: id, to, meals } of away) {
          expect({ to, meals: meals.now }).toEqual({ to: [], meals: [] });
          expect(told.begun).not.toContain(id);
        }
        all += lots.length;
        past += away.length;
      }),
      { numRuns: 16, seed: 11, endOnFailure: true },
    );
    expect(all).toBeGreaterThan(25);
    expect(past).toBeGreaterThan(1);
  });

  it("is so on the plan's own first day too", () => {
    const begun = begin(request([lot("melon", 400, { commodity: "cantaloupe", form: "cut", extraDays: 9 })]));
    const [change] = later(begun, 0).changes;
    expect(change).toMatchObject({ change: "throw away", to: [] });
  });

  it("is not that it was cut where cloves or stalks were broken off, as of a cabbage it is", () => {
    const begun = begin(
      request(["garlic", "celery", "cabbage"].map((kind) => lot(kind, 900, { pieces: 1 }))),
    );
    const eaten = ["garlic", "celery", "cabbage"].map((kind) => ({ lot: kind, eaten: { portions: 1 } }));
    expect(later(begun, 1, { lots: eaten }).begun).toEqual(["cabbage"]);
  });
});
