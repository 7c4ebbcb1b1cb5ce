import { normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";

describe("normal distribution", () => {
  // Abramowitz & Stegun 1964, Table 26.1 (from memory, five figures as printed in common tables).
  it.each([
    [0, 0.5],
    [0.5, 0.69146],
    [1, 0.84134],
    [1.96, 0.975],
    [2.5758, 0.995],
    [3, 0.99865],
  ])("Φ(%s) = %s within 1e-5", (z, phi) => {
    expect(Math.abs(normalDistribution(z) - phi)).toBeLessThan(1e-5);
  });
  it("is symmetric and bounded", () => {
    expect(normalDistribution(-1.3) + normalDistribution(1.3)).toBeCloseTo(1, 12);
    expect(normalDistribution(40)).toBe(1);
    expect(normalDistribution(-40)).toBe(0);
  });
  it("has nine tenths below its ninetieth percentile", () => {
    expect(normalDistribution(normalNinetiethPercentile)).toBeCloseTo(0.9, 6);
  });
});
