import { classes } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ethyleneActionFactor,
  fallKelvins,
  overRipeningQ10,
  overRipeningRate,
  ripeningPower,
  ripeningRate,
  ripeningSlopes,
  ripeningTemperatureFactor,
} from "../../src/index.js";

describe("power to ripen", () => {
  const minimum = fc.double({ min: -2, max: 16, noNaN: true });
  const maximum = fc.double({ min: 20, max: 40, noNaN: true });
  test("is whole at 20 °C, and nothing at the minimum and above the maximum", () => {
    fc.assert(
      fc.property(minimum, maximum, (least, most) => {
        expect(ripeningPower(20, least, most)).toBe(1);
        expect(ripeningPower(least, least, most)).toBe(0);
        expect(ripeningPower(most + 0.01, least, most)).toBe(0);
      }),
    );
  });
  test("never falls on warming up to the fall before the maximum", () => {
    fc.assert(
      fc.property(minimum, maximum, fc.double({ min: -5, max: 40, noNaN: true }), (least, most, celsius) => {
        const warmer = Math.min(celsius + 1, Math.max(20, most - fallKelvins));
        return warmer <= celsius || ripeningPower(warmer, least, most) >= ripeningPower(celsius, least, most);
      }),
    );
  });
  test("is continuous for a maximum above 20 °C", () => {
    for (let celsius = 5; celsius < 32; celsius += 0.01) {
      expect(Math.abs(ripeningPower(celsius + 0.01, 10, 30) - ripeningPower(celsius, 10, 30))).toBeLessThan(
        0.01,
      );
    }
  });
  test("lets ripening go with respiration", () =>
    expect(ripeningTemperatureFactor(0.5, 0.6)).toBeCloseTo(0.3, 12));
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
  expect(1 / overRipeningRate(10, 3, 20)).toBeCloseTo(3 * overRipeningQ10, 12);
});
