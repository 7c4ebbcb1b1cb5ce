import fc from "fast-check";
import { expect, test } from "vitest";
import { dewPoint, saturationPressure } from "../../src/index.js";

test("is the temperature whose saturation pressure it was given", () => {
  fc.assert(
    fc.property(fc.double({ min: -60, max: 100, noNaN: true }), (celsius) => {
      // Within 2e-4 K of the triple point the curves over ice and water differ by up to 0.02 %, which is 0.003 K.
      const slack = Math.abs(celsius - 0.01) < 0.01 ? 5e-3 : 1e-7;
      return Math.abs(dewPoint(saturationPressure(celsius)) - celsius) < slack;
    }),
  );
});

test("refuses a pressure without a dew point and says which unit it wants", () => {
  expect(() => dewPoint(0)).toThrow(/pascal/);
  expect(() => dewPoint(-1)).toThrow(RangeError);
});
