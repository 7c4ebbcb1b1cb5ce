import { seededRandom } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";

const draw = (seed: number, count: number): number[] => {
  const next = seededRandom(seed);
  return Array.from({ length: count }, next);
};

describe("seeded chance", () => {
  it("repeats itself for a seed and differs between seeds", () => {
    expect(draw(7, 50)).toEqual(draw(7, 50));
    expect(draw(7, 50)).not.toEqual(draw(8, 50));
  });
  it("spreads evenly: ten bins of 20,000 draws each within five standard deviations of their mean", () => {
    const counts = new Array<number>(10).fill(0);
    for (const value of draw(1, 20_000)) counts[Math.floor(value * 10)]! += 1;
    // A bin is binomial: mean 2000, standard deviation sqrt(20000 × 0.1 × 0.9) = 42.4.
    for (const count of counts) expect(Math.abs(count - 2000)).toBeLessThan(5 * 42.4);
  });
});
