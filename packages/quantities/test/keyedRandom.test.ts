import { keyedNormal, keyedUniform, normalDistribution } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";

const draws = 20_000;
const normals = (key: string, seed = 1): number[] =>
  Array.from({ length: draws }, (_, draw) => keyedNormal(seed, key, draw));
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe("chance by key", () => {
  it("depends on seed, key and draw alone", () => {
    const first = keyedUniform(3, "apples", 5);
    keyedUniform(3, "pears", 5);
    expect(keyedUniform(3, "apples", 5)).toBe(first);
    expect(keyedUniform(4, "apples", 5)).not.toBe(first);
    expect(keyedUniform(3, "apples", 6)).not.toBe(first);
    expect(keyedUniform(3, "apple", 5)).not.toBe(first);
  });

  it("is normal: mean, variance and tails within five standard errors", () => {
    const values = normals("apples");
    expect(Math.abs(mean(values))).toBeLessThan(5 / Math.sqrt(draws));
    // The variance of a square of a standard normal number is 2.
    expect(Math.abs(mean(values.map((value) => value ** 2)) - 1)).toBeLessThan(5 * Math.sqrt(2 / draws));
    for (const z of [-1.5, -0.5, 0.5, 1.5]) {
      const expected = normalDistribution(z);
      const share = mean(values.map((value) => (value < z ? 1 : 0)));
      expect(Math.abs(share - expected)).toBeLessThan(5 * Math.sqrt((expected * (1 - expected)) / draws));
    }
  });

  it("is unrelated between keys and between seeds that lie side by side", () => {
    const pairs: [number[], number[]][] = [
      [normals("lot 1"), normals("lot 2")],
      [normals("lot 1", 1), normals("lot 1", 2)],
      [normals("lot 1").slice(1), normals("lot 1").slice(0, -1)],
    ];
    for (const [one, other] of pairs) {
      const correlation = mean(one.map((value, index) => value * other[index]!));
      expect(Math.abs(correlation)).toBeLessThan(5 / Math.sqrt(draws));
    }
  });
});
