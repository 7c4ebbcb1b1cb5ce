import { catalogue } from "@keepwright/catalogue";
import { soleNumber } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { correctionKey } from "../../src/state/corrections.js";
import { readLines } from "../../src/state/readLines.js";
import { decimalMarkOf } from "../../src/state/region.js";
import { amountWords, inUnit, offeredUnits, shownAmount, stepped } from "../../src/state/shownAmount.js";

const kind = (id: string) => catalogue().commodities.get(id);
const shown = (text: string, mass: "metric" | "us", corrections = {}) => {
  const line = readLines(text, corrections, catalogue())[0]!;
  return shownAmount(line, kind(line.lot?.commodity ?? ""), mass);
};

describe("the amount of a line as the person thinks of it", () => {
  it.each([
    ["2 lb apples", { value: 2, unit: "lb" }],
    ["8 oz spinach", { value: 8, unit: "oz" }],
    ["1.5 kg carrots", { value: 1.5, unit: "kg" }],
    ["500 g figs", { value: 500, unit: "g" }],
    ["1.25 kg carrots", { value: 1.25, unit: "kg" }],
    ["1,025 g carrots", { value: 1025, unit: "g" }],
    ["3/4 lb spinach", { value: 0.75, unit: "lb" }],
    ["3 avocados", { value: 3, unit: "each" }],
    ["2 lettuces", { value: 2, unit: "head" }],
  ])("stays as it was typed in either system: %s", (text, amount) => {
    expect(shown(text, "metric")).toEqual(amount);
    expect(shown(text, "us")).toEqual(amount);
  });

  it("stays as it was entered in either system", () => {
    const amount = { value: 2, unit: "lb" };
    const corrections = { [correctionKey("1 kg carrots", 0)]: { amount } };
    for (const mass of ["metric", "us", "metric"] as const)
      expect(shown("1 kg carrots", mass, corrections)).toEqual(amount);
  });

  it("goes by the system where nothing was said", () => {
    expect(shown("spinach", "us")?.unit).toBe("oz");
    expect(shown("spinach", "metric")?.unit).toBe("g");
  });
});

describe("units and steps", () => {
  it("offers what the kind is counted in, then the system's, and what was entered", () => {
    expect(offeredUnits(kind("apple"), "metric", undefined)).toEqual(["each", "g", "kg"]);
    expect(offeredUnits(kind("cilantro"), "us", { value: 100, unit: "g" })).toContain("g");
  });
  it("keeps the mass when the unit is changed, and at least one piece", () => {
    expect(inUnit({ value: 2, unit: "lb" }, "g", undefined)).toEqual({ value: 907, unit: "g" });
    expect(inUnit({ value: 5, unit: "g" }, "each", kind("apple"))).toEqual({ value: 1, unit: "each" });
    expect(inUnit({ value: 5, unit: "g" }, "bunch", undefined)).toBeUndefined();
  });
  it("never steps to nothing", () => {
    expect(stepped({ value: 1, unit: "each" }, -1)).toBeUndefined();
    expect(stepped({ value: 1, unit: "kg" }, 1)).toEqual({ value: 1.25, unit: "kg" });
    expect(stepped({ value: 0.25, unit: "kg" }, -1)).toBeUndefined();
  });
});

describe("the number of an amount", () => {
  it.each([
    ["en-GB", 1.25, "1.25"],
    ["es-ES", 1.25, "1,25"],
    ["es-MX", 1.25, "1.25"],
    ["es-ES", 1500, "1500"],
    ["en-US", 12_500, "12500"],
  ])("is written for %s: %d is %s, and read back the same", (tag, value, words) => {
    expect(amountWords(value, tag)).toBe(words);
    for (const unit of ["g", "kg", "lb", "each"])
      expect(soleNumber(words, unit, decimalMarkOf(tag))).toBe(value);
  });
});
