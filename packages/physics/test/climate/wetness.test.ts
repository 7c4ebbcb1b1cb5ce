import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { wetnessMargin, wetnessOf } from "../../src/climate/wetness.js";

describe("wetness of a surface by the humidity around it", () => {
  it("is 0 below the margin, ½ in its middle, 1 from saturation on", () => {
    expect(wetnessOf(0.9)).toBe(0);
    expect(wetnessOf(1 - wetnessMargin)).toBeCloseTo(0, 12);
    expect(wetnessOf(1 - wetnessMargin / 2)).toBeCloseTo(0.5, 12);
    expect(wetnessOf(1)).toBe(1);
    expect(wetnessOf(1.2)).toBe(1);
  });
  it("never falls as humidity rises, and has no jumps", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1.1, noNaN: true }), (humidity) => {
        const rise = wetnessOf(humidity + 1e-4) - wetnessOf(humidity);
        expect(rise).toBeGreaterThanOrEqual(0);
        expect(rise).toBeLessThan(1e-4 * (1.6 / wetnessMargin));
      }),
    );
  });
});
