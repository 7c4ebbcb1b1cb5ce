import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import type { Kitchen, Place } from "../src/problem/kitchen.js";
import type { Haul, Lot } from "../src/problem/lot.js";
import { ordinaryKitchens } from "../src/problem/ordinaryKitchens.js";
import { bindProblem, type PlanRequest } from "../src/problem/problem.js";

/** Invented hauls and kitchens for the planner's tests. */
export const from = "2026-06-13";

export const lot = (commodity: string, grams: number, more: Partial<Lot> = {}) => ({
  id: more.id ?? commodity,
  commodity,
  grams,
  ...more,
});

export const request = (
  lots: readonly object[],
  kitchen: unknown = ordinaryKitchens.ordinary,
  household: unknown = {},
  seed = 1,
): PlanRequest => ({ haul: { lots }, kitchen, household, from, seed, catalogue: catalogue() });

export const bound = (
  lots: readonly object[],
  kitchen: unknown = ordinaryKitchens.ordinary,
  household: unknown = {},
) => bindProblem(request(lots, kitchen, household));

/** A refrigerator with a shelf and a drawer with a vent, and a counter: three places. */
export function smallKitchen(changes: Partial<Kitchen> = {}): Kitchen {
  const kept = ["shelf", "left-drawer", "counter"];
  return {
    ...ordinaryKitchens.ordinary,
    places: ordinaryKitchens.ordinary.places.filter(({ id }) => kept.includes(id)),
    wraps: ["paper bag", "perforated bag", "lidded box"],
    ...changes,
  };
}

/** The kitchen with one place changed. */
export const withPlace = (kitchen: Kitchen, id: string, changes: Partial<Place>): Kitchen => ({
  ...kitchen,
  places: kitchen.places.map((place) => (place.id === id ? { ...place, ...changes } : place)),
});

const kinds = [...catalogue().commodities.keys()].sort();

const anyLot = fc.record({
  commodity: fc.constantFrom(...kinds),
  grams: fc.integer({ min: 20, max: 2500 }),
  ripeness: fc.option(fc.constantFrom("unripe", "turning", "ripe", "very ripe"), { nil: undefined }),
  form: fc.constantFrom("whole", "whole", "whole", "cut"),
  tops: fc.boolean(),
  washed: fc.boolean(),
  extraDays: fc.integer({ min: 0, max: 3 }),
  pieces: fc.option(fc.integer({ min: 1, max: 8 }), { nil: undefined }),
});

/** Any haul of up to `most` lots that the catalogue knows. */
export const anyHaul = (most: number): fc.Arbitrary<Haul> =>
  fc.array(anyLot, { minLength: 1, maxLength: most }).map(
    (lots) =>
      ({
        lots: lots.map(({ ripeness, pieces, ...rest }, index) => ({
          id: `lot ${index}`,
          ...rest,
          ...(ripeness && { ripeness }),
          ...(pieces && { pieces }),
        })),
      }) as Haul,
  );

export const anyHousehold = fc.record({
  people: fc.integer({ min: 1, max: 6 }),
  portionsPerPersonPerDay: fc.integer({ min: 1, max: 6 }),
  daysAway: fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { maxLength: 3 }),
  days: fc.integer({ min: 1, max: 9 }),
});

export const anyKitchen: fc.Arbitrary<Kitchen> = fc.constantFrom(
  ...Object.values(ordinaryKitchens),
  smallKitchen(),
);
