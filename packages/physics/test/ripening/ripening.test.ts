import { classes } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  ethyleneActionFactor,
  fallKelvins,
  overRipeningRate,
  ripeningRate,
  ripeningSlopes,
  ripeningTemperatureFactor,
} from "../../src/index.js";

/** A respiration that doubles every 10 K, relative to 20 °C. */
const ratio = (celsius: number) => 2 ** ((celsius - 20) / 10);

describe("temperature and ripening", () => {
  const minimum = fc.double({ min: -2, max: 16, noNaN: true });
  const maximum = fc.double({ min: 20, max: 40, noNaN: true });
  test("is 1 at 20 °C, and nothing at the minimum and above the maximum", () => {
    fc.assert(
      fc.property(minimum, maximum, (least, most) => {
        expect(ripeningTemperatureFactor(20, least, most, 1)).toBeCloseTo(1, 12);
        expect(ripeningTemperatureFactor(least, least, most, 0.5)).toBe(0);
        expect(ripeningTemperatureFactor(most + 0.01, least, most, 3)).toBe(0);
      }),
    );
  });
  test("never slows on warming up to the fall", () => {
    fc.assert(
      fc.property(minimum, maximum, fc.double({ min: -5, max: 40, noNaN: true }), (least, most, celsius) => {
        const warmer = Math.min(celsius + 1, Math.max(20, most - fallKelvins));
        if (warmer <= celsius) return true;
        return (
          ripeningTemperatureFactor(warmer, least, most, ratio(warmer)) >=
          ripeningTemperatureFactor(celsius, least, most, ratio(celsius))
        );
      }),
    );
  });
  test("is continuous for a maximum above 20 °C", () => {
    for (let celsius = 5; celsius < 32; celsius += 0.001) {
      const step =
        ripeningTemperatureFactor(celsius + 0.001, 10, 30, ratio(celsius + 0.001)) -
        ripeningTemperatureFactor(celsius, 10, 30, ratio(celsius));
      expect(Math.abs(step)).toBeLessThan(2e-3);
    }
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

test("ripe fruit lasts its ripe life at its temperature", () => expect(1 / overRipeningRate(1, 3)).toBe(3));
