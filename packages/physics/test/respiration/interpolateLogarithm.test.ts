import { describe, expect, test } from "vitest";
import { interpolateLogarithm, outsideQ10Bounds } from "../../src/index.js";

const table = { temperatures: [0, 10, 20], values: [10, 20, 60] };

describe("interpolation in the logarithm", () => {
  test("gives the table's own values at its points", () => {
    for (const [which, celsius] of table.temperatures.entries()) {
      expect(interpolateLogarithm(table, celsius, { outside: "band" })).toBeCloseTo(table.values[which]!, 12);
    }
  });
  test("gives the geometric mean half-way", () => {
    expect(interpolateLogarithm(table, 15, { outside: "hold" })).toBeCloseTo(Math.sqrt(20 * 60), 10);
  });
  test("carries the nearest band on outside", () => {
    expect(interpolateLogarithm(table, -10, { outside: "band" })).toBeCloseTo(5, 10);
    expect(interpolateLogarithm(table, 30, { outside: "band" })).toBeCloseTo(180, 10);
  });
  test("does not let a steep or falling band run away", () => {
    const steep = { temperatures: [15, 20], values: [42, 125] };
    expect(interpolateLogarithm(steep, 30, { outside: "band" })).toBeCloseTo(125 * outsideQ10Bounds.most, 9);
    const falling = { temperatures: [15, 20], values: [40, 25] };
    expect(interpolateLogarithm(falling, 30, { outside: "band" })).toBeCloseTo(25, 12);
  });
  test("holds the end, or follows a given Q10, when told to", () => {
    expect(interpolateLogarithm(table, 40, { outside: "hold" })).toBe(60);
    expect(interpolateLogarithm({ temperatures: [20], values: [9] }, 0, { outside: 3 })).toBeCloseTo(1, 12);
  });
  test("says what is missing", () => {
    expect(() => interpolateLogarithm({ temperatures: [], values: [] }, 4, { outside: "hold" })).toThrow(
      /at least one point/,
    );
    expect(() => interpolateLogarithm({ temperatures: [20], values: [9] }, 4, { outside: "band" })).toThrow(
      /Give a Q10/,
    );
  });
});
