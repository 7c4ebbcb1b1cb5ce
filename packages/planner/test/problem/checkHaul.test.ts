import { catalogue } from "@keepwright/catalogue";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkHaul, haulFrom } from "../../src/problem/checkHaul.js";
import { HaulError } from "../../src/problem/inputError.js";
import { anyHaul, lot } from "../support.js";

const problemsOf = (haul: unknown): string[] => {
  const check = checkHaul(haul, catalogue());
  return check.ok ? [] : check.problems.map(({ thing, value, remedy }) => `${thing}: ${value}. ${remedy}`);
};

describe("checkHaul", () => {
  it("accepts what the catalogue knows", () => {
    fc.assert(
      fc.property(anyHaul(8), (haul) => {
        expect(problemsOf(haul)).toEqual([]);
      }),
      { numRuns: 30, seed: 22 },
    );
  });

  const wrong: [string, unknown, RegExp][] = [
    ["an empty haul", { lots: [] }, /haul: it is empty/],
    [
      "an unknown kind",
      { lots: [lot("moonfruit", 100)] },
      /"moonfruit".*"moonfruit" is not in the catalogue/,
    ],
    ["no grams", { lots: [lot("apple", 0)] }, /"apple".*0/],
    ["fewer than no grams", { lots: [lot("apple", -3)] }, /-3/],
    ["a mountain", { lots: [lot("apple", 1e9)] }, /1000000000/],
    ["no number", { lots: [lot("apple", Number.NaN)] }, /apple/],
    ["one id twice", { lots: [lot("apple", 100), lot("apple", 100)] }, /more than once/],
    ["61 lots", { lots: Array.from({ length: 61 }, (_, i) => lot("apple", 1, { id: `${i}` })) }, /lots/],
    ["mark-up as a kind", { lots: [lot("<script>alert(1)</script>", 5)] }, /not in the catalogue/],
    [
      "control characters in an id",
      { lots: [lot("nothing", 5, { id: "a\u0000\u001b[2J" })] },
      /\\u0000\\u001b/,
    ],
  ];
  it.each(wrong)("rejects %s", (_, haul, message) => {
    expect(problemsOf(haul).join("\n")).toMatch(message);
    expect(() => haulFrom(haul, catalogue())).toThrow(HaulError);
  });

  it("answers anything at all without throwing", () => {
    fc.assert(
      fc.property(fc.anything(), (given) => {
        expect(checkHaul(given, catalogue()).ok).toBe(false);
      }),
      { seed: 23 },
    );
  });
});
