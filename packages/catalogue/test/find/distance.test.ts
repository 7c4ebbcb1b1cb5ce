import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slips, slipsForgiven } from "../../src/find/distance.js";

describe("slips between two words", () => {
  it.each([
    ["apple", "apple", 0],
    ["aple", "apple", 1],
    ["appel", "apple", 1],
    ["brocolli", "broccoli", 2],
    ["kitten", "sitting", 3],
    ["", "abc", 3],
    ["ca", "abc", 3],
  ])("%j and %j: %i", (first, second, count) => {
    expect(slips(first, second, 9)).toBe(count);
    expect(slips(second, first, 9)).toBe(count);
  });

  it("says one more than the most when there are more", () => {
    expect(slips("kitten", "sitting", 2)).toBe(3);
    expect(slips("a", "abcdefgh", 2)).toBe(3);
    expect(slips("x".repeat(500), "y".repeat(500), 3)).toBe(4);
  });

  it("is nought only for equal words, the same both ways, and never more than the longer word", () => {
    const word = fc.string({ unit: fc.constantFrom(..."abc"), maxLength: 9 });
    fc.assert(
      fc.property(word, word, (first, second) => {
        const count = slips(first, second, 20);
        expect(count).toBe(slips(second, first, 20));
        expect(count === 0).toBe(first === second);
        expect(count).toBeLessThanOrEqual(Math.max(first.length, second.length));
      }),
    );
  });

  it("forgives none in short words", () => {
    expect([1, 3, 4, 5, 6, 9, 10].map(slipsForgiven)).toEqual([0, 0, 1, 1, 2, 2, 3]);
  });
});
