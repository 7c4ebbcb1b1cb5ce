import fc from "fast-check";
import type { SimulatedLot, SimulatedStay } from "../../src/simulate/simulation.js";
import { type Kind, kinds } from "./kinds.js";
import { boxes, lot, stay } from "./kitchen.js";

const all = Object.keys(kinds) as Kind[];
const wrapIds = ["none", "none", "paper bag", "perforated bag", "closed film bag", "damp towel"] as const;

export const aPlace: fc.Arbitrary<number | "room"> = fc.constantFrom<number | "room">(
  ...boxes.map((_, box) => box),
  "room",
);

export const aStay: fc.Arbitrary<SimulatedStay> = fc
  .record({ place: aPlace, wrap: fc.constantFrom(...wrapIds) })
  .map(({ place, wrap }) => stay(place, { wrap }));

/** One stay, or a second after ripening or after some days. */
export const someStays: fc.Arbitrary<SimulatedStay[]> = fc
  .record({
    first: aStay,
    second: aStay,
    move: fc.oneof(
      { weight: 3, arbitrary: fc.constant("never" as const) },
      { weight: 1, arbitrary: fc.constant("ripe" as const) },
      { weight: 1, arbitrary: fc.double({ min: 0.1, max: 9, noNaN: true }).map((day) => ({ day })) },
    ),
  })
  .map(({ first, second, move }) => (move === "never" ? [first] : [{ ...first, until: move }, second]));

export const aLot = (
  stays: fc.Arbitrary<readonly SimulatedStay[]> = someStays,
  of: readonly Kind[] = all,
): fc.Arbitrary<SimulatedLot> =>
  fc
    .record({
      kind: fc.constantFrom(...of),
      kilograms: fc.double({ min: 0.1, max: 2, noNaN: true }),
      stays,
      ripeness: fc.double({ min: 0, max: 1.2, noNaN: true }),
      spent: fc.double({ min: 0, max: 0.4, noNaN: true }),
    })
    .map(({ kind, kilograms, stays, ripeness, spent }) => lot(kind, kilograms, stays, { ripeness, spent }));

export const aHaul = (one: fc.Arbitrary<SimulatedLot> = aLot(), most = 12): fc.Arbitrary<SimulatedLot[]> =>
  fc.array(one, { minLength: 1, maxLength: most });
