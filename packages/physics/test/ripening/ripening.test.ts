import { classes } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ethyleneActionFactor,
  heatShare,
  lifeThroughRipening,
  overRipeningRate,
  ripeningPower,
  ripeningQ10,
  ripeningRate,
  ripeningSlopes,
  storingShare,
  type UnripeFruit,
  unripeLife,
  unripeQ10,
} from "../../src/index.js";
import { ripener } from "../fixtures/kinds.js";

const minimum = fc.double({ min: -2, max: 16, noNaN: true });
const maximum = fc.double({ min: 20, max: 40, noNaN: true });
const celsius = fc.double({ min: -5, max: 45, noNaN: true });

describe("power to ripen", () => {
  test("is whole at 20 °C and nothing at the minimum", () => {
    fc.assert(
      fc.property(minimum, (least) => {
        expect(ripeningPower(20, least)).toBe(1);
        expect(ripeningPower(least, least)).toBe(0);
      }),
    );
  });
  test("never falls on warming, without jumps", () => {
    fc.assert(
      fc.property(minimum, celsius, (least, cold) => {
        const rise = ripeningPower(cold + 0.01, least) - ripeningPower(cold, least);
        expect(rise).toBeGreaterThanOrEqual(0);
        expect(rise).toBeLessThan(0.01);
      }),
    );
  });
  test("storing fades only where it is whole already", () => {
    fc.assert(
      fc.property(minimum, celsius, (least, cold) => {
        expect(storingShare(cold, least) === 1 || ripeningPower(cold, least) === 1).toBe(true);
      }),
    );
    expect([7, 8.5, 10].map((cold) => storingShare(cold, 4))).toEqual([1, 0.5, 0]);
  });
});

test("heat spoils nothing at 20 °C, all from the maximum on, and never less in greater heat", () => {
  fc.assert(
    fc.property(maximum, celsius, (most, warm) => {
      expect(heatShare(20, most + 0.1)).toBe(0);
      expect(heatShare(most + 0.01, most)).toBe(1);
      expect(heatShare(warm + 1, most)).toBeGreaterThanOrEqual(heatShare(warm, most));
    }),
  );
  expect(heatShare(29, 30)).toBeCloseTo(0.5, 12);
});

describe("life of unripe fruit", () => {
  const { ripening } = ripener;
  const fruit = (changes: Partial<UnripeFruit> = {}): UnripeFruit => ({
    ripening: ripening!,
    storageLifeDays: 20,
    storageTemperature: 6,
    ...changes,
  });
  // Its power to ripen is whole at 9 °C, and it lives 5 · 2^1.1 + 3 · 2^1.1 = 17.1 days through ripening there.
  const whole = 8 * 2 ** 1.1;

  test("is its storage life where that was published, and life through ripening where it ripens in full", () => {
    expect(unripeLife(6, fruit())).toBeCloseTo(20, 12);
    expect(unripeLife(9, fruit())).toBeCloseTo(whole, 12);
    expect(unripeLife(7.5, fruit())).toBeCloseTo(Math.sqrt(20 * whole), 12);
    expect(unripeLife(20, fruit())).toBeCloseTo(5 + 3, 12);
  });
  test("beyond the two goes with the Q10 of ripening", () => {
    expect(unripeLife(1, fruit())).toBeCloseTo(20 * Math.SQRT2, 12);
    expect(unripeLife(30, fruit())).toBeCloseTo((5 + 3) / ripeningQ10, 12);
  });
  test("is the longer of the two where the colder was published as the shorter", () => {
    expect(unripeLife(6, fruit({ storageLifeDays: 10 }))).toBeCloseTo(whole, 12);
    expect(unripeLife(8, fruit({ storageLifeDays: 10 }))).toBeCloseTo(whole, 12);
  });
  test("has the Q10 its own two lives imply where they were told 15 K apart", () => {
    const cold = fruit({ storageTemperature: 0, storageLifeDays: 57 });
    // Ripe it lives 3 · 2² = 12 of the 57 days; the other 45 are 9 times the 5 days to ripen at 20 °C: threefold in 10 K.
    expect(unripeQ10(cold)).toBeCloseTo(3, 12);
    expect(unripeLife(0, cold)).toBeCloseTo(57, 12);
    expect(lifeThroughRipening(0, cold)).toBeCloseTo(57, 12);
    expect(lifeThroughRipening(10, cold)).toBeCloseTo(5 * 3 + 3 * 2, 12);
    // Above 20 °C, where neither was told, the general one holds.
    expect(lifeThroughRipening(30, cold)).toBeCloseTo((5 + 3) / ripeningQ10, 12);
    expect(unripeQ10(fruit({ storageTemperature: 6, storageLifeDays: 57 }))).toBe(ripeningQ10);
    expect(unripeQ10(fruit({ storageTemperature: 0, storageLifeDays: 12 }))).toBe(1);
  });
  test("does not hear of a storage life told where it ripens", () => {
    expect(unripeLife(7, fruit({ storageTemperature: 12 }))).toBeCloseTo(8 * 2 ** 1.3, 12);
  });
  test("never grows on warming", () => {
    const days = fc.double({ min: 1, max: 200, noNaN: true });
    fc.assert(
      fc.property(days, fc.double({ min: -1, max: 18, noNaN: true }), celsius, (life, stored, cold) => {
        const kept = fruit({ storageLifeDays: life, storageTemperature: stored });
        expect(unripeLife(cold + 0.001, kept)).toBeLessThanOrEqual(unripeLife(cold, kept) * (1 + 1e-12));
      }),
    );
  });
});

describe("ethylene and ripening", () => {
  test("fruit shut in with its ethylene ripens sooner: the paper bag", () => {
    const days = (ethylene: number) =>
      1 / ripeningRate(1, 5, ethyleneActionFactor(ripeningSlopes.moderate, ethylene));
    expect(days(5)).toBeLessThan(0.7 * days(0.06));
  });
  test("classes of response go up", () => {
    const slopes = classes.map((name) => ripeningSlopes[name]);
    expect(slopes).toEqual([...slopes].sort((one, other) => one - other));
  });
});

test("ripe fruit lasts its ripe life at its temperature", () => {
  expect(1 / overRipeningRate(20, 3, 20)).toBe(3);
  expect(1 / overRipeningRate(10, 3, 20)).toBeCloseTo(3 * ripeningQ10, 12);
});
