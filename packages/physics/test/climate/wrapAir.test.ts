import { describe, expect, it } from "vitest";
import { wrapAir } from "../../src/climate/wrapAir.js";
import { wraps } from "../simulate/kitchen.js";

describe("the air in a wrap", () => {
  it("passes in proportion to its area: eight times the mass, four times the exchange", () => {
    const small = wrapAir(wraps.get("paper bag")!, 1);
    const large = wrapAir(wraps.get("paper bag")!, 8);
    expect(large.litresPerHour / small.litresPerHour).toBeCloseTo(4, 12);
    expect(large.exchange / small.exchange).toBeCloseTo(4, 12);
    expect(small.litresPerHour).toBe(60);
    expect(small.exchange).toBeCloseTo(170 / 3_600_000, 15);
  });
  it("is open air without a wrap and in a glass of water", () => {
    expect(wrapAir(wraps.get("none")!, 1).closes).toBe(false);
    expect(wrapAir(wraps.get("glass of water")!, 1).closes).toBe(false);
    expect(wrapAir(wraps.get("damp towel")!, 1).closes).toBe(true);
  });
  it("refuses a lot without mass", () => {
    expect(() => wrapAir(wraps.get("none")!, 0)).toThrow(RangeError);
    expect(() => wrapAir(wraps.get("none")!, Number.NaN)).toThrow(/NaN kg/);
  });
});
