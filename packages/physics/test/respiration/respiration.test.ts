import { describe, expect, test } from "vitest";
import {
  beckerFrickeCoefficients,
  beckerFrickeRespiration,
  carbonLossPerDay,
  heatPerMilligramCarbonDioxide,
  q10,
  rateByQ10,
  respirationBy,
  withoutDips,
} from "../../src/index.js";
import { leaf } from "../fixtures/kinds.js";

test("a fall on warming is held level", () => {
  const carrot = withoutDips({ temperatures: [10, 15, 20], values: [31, 40, 25] });
  expect(carrot.values).toEqual([31, 40, 40]);
});

test("burning glucose: 264 g of carbon dioxide take 180 g of it", () => {
  expect(carbonLossPerDay(264 / 24) * 1e6).toBeCloseTo(180, 9);
});

test("heat for each milligram of carbon dioxide is that of burning glucose, 2816 kJ for 264 g, within 0.5 %", () => {
  expect(Math.abs(heatPerMilligramCarbonDioxide / (2_816_000 / 264_000) - 1)).toBeLessThan(5e-3);
});

describe("Becker & Fricke's correlation", () => {
  test("has no respiration at and below 0 °F and never falls on warming", () => {
    const apple = beckerFrickeCoefficients.apple!;
    expect(beckerFrickeRespiration(apple, -20)).toBe(0);
    for (let celsius = -10; celsius < 35; celsius++) {
      expect(beckerFrickeRespiration(apple, celsius + 1)).toBeGreaterThan(
        beckerFrickeRespiration(apple, celsius),
      );
    }
  });
  test("is chosen by name, and refuses kinds without coefficients", () => {
    expect(respirationBy("Handbook 66", leaf, 10)).toBe(60);
    expect(respirationBy("Becker & Fricke", { ...leaf, id: "apple" }, 0)).toBeCloseTo(4.6, 1);
    expect(() => respirationBy("Becker & Fricke", leaf, 10)).toThrow(/plain-leaf/);
  });
});

describe("Q10", () => {
  test("of a rate that doubles over 5 K is 4, and goes back", () => {
    expect(q10(10, 0, 20, 5)).toBeCloseTo(4, 12);
    expect(rateByQ10(10, 0, 4, 5)).toBeCloseTo(20, 12);
  });
  test("needs two temperatures", () => expect(() => q10(1, 5, 2, 5)).toThrow(/different/));
});
