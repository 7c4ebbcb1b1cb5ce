import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  chillingCurve,
  chillingRate,
  chillingThreshold,
  freezingRate,
  freezingRateAt,
  keepingQuality,
  senescenceRate,
} from "../../src/index.js";

test("life at constant conditions is one over the sum of rates", () => {
  expect(keepingQuality(0.1, 0.15)).toBeCloseTo(4, 12);
  expect(keepingQuality()).toBe(Number.POSITIVE_INFINITY);
});

test("senescence uses the published life up in that life", () => {
  expect(senescenceRate(20, 20, 12)).toBeCloseTo(1 / 12, 12);
  expect(senescenceRate(40, 20, 12)).toBeCloseTo(1 / 6, 12);
});

describe("chilling", () => {
  const curve = chillingCurve(10, { temperatures: [0, 5], values: [2, 10] });
  test("meets the published days", () => {
    expect(1 / chillingRate(curve, 10 - 0)).toBeCloseTo(2, 12);
    expect(1 / chillingRate(curve, 10 - 5)).toBeCloseTo(10, 12);
  });
  test("is nothing at and above the lowest safe temperature", () => {
    expect(chillingRate(curve, 0)).toBe(0);
    expect(chillingRate(curve, -3)).toBe(0);
  });
  test("is a straight line to the threshold and beyond the coldest point", () => {
    expect(chillingRate(curve, 2.5)).toBeCloseTo(0.05, 12);
    expect(chillingRate(curve, 15)).toBeCloseTo(0.9, 12);
  });
  test("never falls as it gets colder where the published points do not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        (deficit, more) => chillingRate(curve, deficit + more) >= chillingRate(curve, deficit),
      ),
    );
  });
  test("refuses a point that is not below the threshold", () => {
    expect(() => chillingCurve(7, { temperatures: [8], values: [3] })).toThrow(/8 °C/);
  });
  test("the threshold stays while unripe, moves as it turns ripe, and stays", () => {
    expect([-1, 0.5, 0.75, 0.875, 1, 2].map((ripeness) => chillingThreshold(13, 9, ripeness))).toEqual([
      13, 13, 13, 11, 9, 9,
    ]);
  });
});

test("freezing is over within an hour below the freezing point and nothing above", () => {
  expect(freezingRateAt(-0.6, -0.5)).toBe(freezingRate);
  expect(freezingRateAt(-0.5, -0.5)).toBe(0);
  expect(24 / freezingRate).toBeLessThanOrEqual(1);
});
