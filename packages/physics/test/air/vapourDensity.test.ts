import fc from "fast-check";
import { expect, test } from "vitest";
import { saturationPressure, vapourDensityFromPressure, vapourPressureFromDensity } from "../../src/index.js";

test("saturated air at 20 °C holds 17.3 g/m³ (common physics tables, from memory) within 0.5 %", () => {
  expect(Math.abs(vapourDensityFromPressure(saturationPressure(20), 20) / 0.0173 - 1)).toBeLessThan(5e-3);
});

test("density and pressure are inverse", () => {
  const pressures = fc.double({ min: 1, max: 5000, noNaN: true });
  fc.assert(
    fc.property(pressures, fc.double({ min: -20, max: 50, noNaN: true }), (pressure, celsius) => {
      const back = vapourPressureFromDensity(vapourDensityFromPressure(pressure, celsius), celsius);
      return Math.abs(back / pressure - 1) < 1e-12;
    }),
  );
});
