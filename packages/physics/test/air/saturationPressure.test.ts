import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { saturationPressure, triplePointCelsius } from "../../src/index.js";

describe("saturation pressure of water vapour", () => {
  // ASHRAE Handbook Fundamentals (2017) ch. 1, table 3, "Thermodynamic properties of water at saturation"; from memory.
  test.each([
    [-40, 12.85],
    [-20, 103.24],
    [-10, 259.87],
    [0, 611.15],
    [5, 872.5],
    [10, 1228.0],
    [20, 2338.9],
    [25, 3169.2],
    [40, 7383.5],
  ])("agrees with the handbook's table at %d °C within 0.05 %%", (celsius, pascals) => {
    expect(Math.abs(saturationPressure(celsius) / pascals - 1)).toBeLessThan(5e-4);
  });

  test("rises with temperature", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        (colder, step) => saturationPressure(colder + step) > saturationPressure(colder),
      ),
    );
  });

  test("joins over ice and over water without a step of more than 0.02 %", () => {
    const below = saturationPressure(triplePointCelsius - 1e-9);
    expect(Math.abs(saturationPressure(triplePointCelsius) / below - 1)).toBeLessThan(2e-4);
  });

  test("refuses temperatures outside its range and names them", () => {
    expect(() => saturationPressure(250)).toThrow(/250 °C/);
    expect(() => saturationPressure(Number.NaN)).toThrow(RangeError);
  });
});
