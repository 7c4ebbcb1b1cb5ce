import type { Course } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chart, curvesOf, dayStep, labelHeights, pathOf, up } from "../../src/drawing/curves.js";

const course: Course = {
  ripeness: [0, 1, 2],
  waterLost: [0, 0.02, 0.04],
  ageing: [0, 0.25, 0.5],
  lifeUsed: [0, 0.5, 1],
  quality: [1, 1, 0.9],
};

describe("the course of a lot as curves", () => {
  it("has every process at its end where its value is 1", () => {
    const curves = curvesOf({ course, mostWater: 0.08, ripens: true });
    expect(curves.map(({ name, values }) => [name, ...values])).toEqual([
      ["ageing", 0, 0.25, 0.5],
      ["water", 0, 0.25, 0.5],
      ["ripeness", 0, 0.5, 1],
    ]);
    expect(curvesOf({ course, mostWater: 0.08, ripens: false }).map(({ name }) => name)).not.toContain(
      "ripeness",
    );
  });

  it("runs from the left axis to the right edge, never out of the drawing", () => {
    const [first] = curvesOf({ course: { ...course, ageing: [0, 0.7, 3] }, mostWater: 0.08, ripens: false });
    expect(pathOf(first!)).toBe(
      `M${chart.left}.0 ${chart.bottom}.0L${(chart.left + chart.right) / 2}.0 ${up(0.7).toFixed(1)}L${chart.right}.0 ${chart.top}.0`,
    );
  });

  it("names curves apart from one another, within the drawing and in the order of their ends", () => {
    const ends = fc.array(fc.double({ min: chart.top, max: chart.bottom, noNaN: true }), {
      minLength: 1,
      maxLength: 3,
    });
    fc.assert(
      fc.property(ends, (each) => {
        const heights = labelHeights(each);
        const sorted = [...heights].sort((one, other) => one - other);
        sorted.slice(1).forEach((height, index) => {
          expect(height - sorted[index]!).toBeGreaterThanOrEqual(15 - 1e-9);
        });
        for (const height of heights) {
          expect(height).toBeGreaterThanOrEqual(chart.top);
          expect(height).toBeLessThanOrEqual(chart.bottom);
        }
        each.forEach((end, one) => {
          each.forEach((other, two) => {
            if (end < other) expect(heights[one]!).toBeLessThan(heights[two]!);
          });
        });
      }),
    );
  });

  it("writes no more days on the axis than fit", () => {
    for (let days = 3; days <= 21; days++)
      expect(Math.floor(days / dayStep(days)) + 1).toBeLessThanOrEqual(7);
  });
});
