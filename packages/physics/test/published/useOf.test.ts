import { describe, expect, test } from "vitest";
import { judged } from "./record.js";
import { isSameSource, useOf } from "./useOf.js";

describe("whether a published figure was given to the model", () => {
  test("what the column says wins over the sources", () => {
    expect(useOf({ use: "fit", sourceKey: "one" }, ["another"])).toBe("fit");
    expect(useOf({ use: "check", sourceKey: "one" }, ["one"])).toBe("check");
    expect(() => useOf({ kind: "kale", use: "maybe" }, [])).toThrow(/kale: "maybe"/);
  });
  test("else the sources are compared, whether or not they end in a year", () => {
    expect(useOf({ use: "", sourceKey: "handbook-66" }, ["handbook-66-2016"])).toBe("fit");
    expect(useOf({ sourceKey: "one" }, ["another"])).toBe("check");
    expect(isSameSource("handbook-66-1986", "handbook-66-2016")).toBe(false);
    expect(isSameSource("handbook", "handbook-66")).toBe(false);
    expect(isSameSource("nunes-2003-squash", "nunes-2003")).toBe(false);
  });
});

describe("a comparison is judged", () => {
  const comparison = {
    room: "ripening",
    what: "an invented figure",
    unit: "d",
    source: "invented",
    fromMemory: false,
    use: "check",
    tolerance: 1.5,
  } as const;
  test("against the nearest end of a range, and its geometric middle beside", () => {
    const range = { ...comparison, publishedLow: 4, publishedHigh: 9 };
    expect(judged({ ...range, model: 18 })).toMatchObject({
      ratio: 2,
      ratioToMiddle: 3,
      within: false,
      bound: false,
    });
    expect(judged({ ...range, model: 8 })).toMatchObject({ ratio: 1, nearest: 8, within: true });
  });
  test("against a bound from one side only, and then it has no middle", () => {
    const least = judged({ ...comparison, publishedLow: 10, model: 1000 });
    expect(least).toMatchObject({ ratio: 1, bound: true });
    expect(least.ratioToMiddle).toBeUndefined();
    expect(judged({ ...comparison, publishedHigh: 10, model: 20 })).toMatchObject({
      ratio: 2,
      within: false,
    });
  });
  test("never without a figure", () => {
    expect(() => judged({ ...comparison, model: 1 })).toThrow(/undefined to undefined/);
    expect(() => judged({ ...comparison, model: 1, publishedLow: 3, publishedHigh: 2 })).toThrow(
      /from 3 to 2/,
    );
  });
});
