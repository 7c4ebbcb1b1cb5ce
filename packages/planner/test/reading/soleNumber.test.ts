import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { readHaul, soleNumber } from "../../src/index.js";

describe("a number written by itself", () => {
  it.each([
    ["1,500", "g", ".", 1500],
    ["1.500", "g", ",", 1500],
    ["1,5", "kg", ",", 1.5],
    ["1.25", "kg", ".", 1.25],
    ["1,250", "kg", ".", 1.25],
    ["1,250", "kg", ",", 1.25],
    ["1,000", "kg", ".", 1000],
    ["1,500", "each", ".", 1500],
    ["1.500", "each", ",", 1500],
    ["1,125", "lb", ",", 1.125],
    ["1.125", "lb", ".", 1.125],
    ["1/2", "lb", ".", 0.5],
    ["½", "lb", ".", 0.5],
    ["1 1/2", "lb", ".", 1.5],
    ["1½", "kg", ",", 1.5],
    ["1\u00a0500", "g", ",", 1500],
    [" 12 ", "each", ".", 12],
  ] as const)("%s %s where decimals come after %s is %d", (text, unit, mark, value) => {
    expect(soleNumber(text, unit, mark)).toBe(value);
  });

  it.each(["", " ", "-2", "2-3", "a few", "1,2,3", "x", "2 kg", "2 4", "1/0", "NaN", "Infinity"])(
    "%j is none",
    (text) => {
      expect(soleNumber(text, "g", ".")).toBeUndefined();
    },
  );

  it("is as a list has it, before g and kg in every region", () => {
    for (const text of ["1,500", "1.500", "1,5", "1.5", "750", "1 1/2", "½", "2,250"])
      for (const [unit, grams] of [
        ["g", 1],
        ["kg", 1000],
      ] as const) {
        const item = readHaul(`${text} ${unit} potatoes`, catalogue()).items[0];
        if (item?.kind !== "lot") continue;
        for (const mark of [".", ","] as const)
          expect(soleNumber(text, unit, mark)! * grams, `${text} ${unit}`).toBeCloseTo(item.lot.grams, 6);
      }
  });
});
