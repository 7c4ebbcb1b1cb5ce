import { classes } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  decayDampFactor,
  decayRipenessFactor,
  decayTemperatureFactor,
  decayWeights,
  decayWetnessFactor,
} from "../../src/index.js";

const share = () => fc.double({ min: 0, max: 1, noNaN: true });

describe("decay", () => {
  test("does not end ripe, whole, dry produce before its published life, unless it is very prone", () => {
    for (const name of classes) {
      const doseOverLife = decayWeights.proneness[name] * decayRipenessFactor(1);
      expect(doseOverLife > 1).toBe(name === "very high");
    }
  });
  test("is slower in the cold, on dry skin and on unripe fruit", () => {
    fc.assert(
      fc.property(share(), share(), (one, other) => {
        const [less, more] = one < other ? [one, other] : [other, one];
        return (
          decayTemperatureFactor(30 * less, 5) <= decayTemperatureFactor(30 * more, 5) &&
          decayWetnessFactor(less) <= decayWetnessFactor(more) &&
          decayRipenessFactor(2 * less) <= decayRipenessFactor(2 * more) &&
          decayDampFactor(less, 0.7) <= decayDampFactor(more, 0.7)
        );
      }),
    );
  });
  test("of unripe fruit sleeps, and wakes as it ripens without a jump", () => {
    expect([0, 1, 2].map((ripeness) => Number(decayRipenessFactor(ripeness).toFixed(9)))).toEqual([
      0.25, 2, 4,
    ]);
    expect(decayRipenessFactor(1 - 1e-9)).toBeCloseTo(decayRipenessFactor(1), 6);
  });
  test("of kinds stored dry is untouched in their own air and fivefold in saturated air", () => {
    expect(decayDampFactor(0.7, 0.7)).toBe(1);
    expect(decayDampFactor(1, 0.7)).toBeCloseTo(decayWeights.damp, 12);
    expect(decayDampFactor(1.02, 0.7)).toBeCloseTo(decayWeights.damp, 12);
  });
});
