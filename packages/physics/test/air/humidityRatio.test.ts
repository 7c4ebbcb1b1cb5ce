import { expect, test } from "vitest";
import { humidityRatioFromVapourPressure } from "../../src/index.js";

test("refuses vapour pressures the air cannot have", () => {
  expect(() => humidityRatioFromVapourPressure(101_325)).toThrow(/total pressure/);
  expect(() => humidityRatioFromVapourPressure(-1)).toThrow(RangeError);
});

test("dry air holds no water", () => expect(humidityRatioFromVapourPressure(0)).toBe(0));
