import { catalogue } from "@keepwright/catalogue";
import { describe, expect, it } from "vitest";
import { unitsOf, wishOf } from "../../src/buying/boughtUnit.js";
import { buyingRule } from "../../src/buying/declared.js";
import { haulFrom } from "../../src/problem/checkHaul.js";
import { lot } from "../support.js";

const wish = (...asked: Parameters<typeof lot>) =>
  wishOf(haulFrom({ lots: [lot(...asked)] }, catalogue()).lots[0]!, catalogue(), 100);

/** Grams of one measure of a kind, from the catalogue. */
const measure = (kind: string, name: string): number =>
  catalogue()
    .commodities.get(kind)!
    .household.units.find((unit) => unit.name === name)!.grams;

describe("the units a wish is bought in", () => {
  it("are pieces where they were counted", () => {
    expect(wish("apple", 1000, { pieces: 5 })).toMatchObject({ unit: { grams: 200, pieces: 1 }, count: 5 });
  });
  it("are several small pieces together, a portion at least", () => {
    const { unit, count } = wish("cherry", 360, { pieces: 40 });
    expect(unit.pieces).toBeGreaterThan(1);
    expect(unit.grams).toBeGreaterThanOrEqual(
      0.99 * catalogue().commodities.get("cherry")!.household.portion.value,
    );
    expect(count).toBe(Math.ceil(40 / unit.pieces!));
  });
  it("are bunches where the mass is a whole number of them", () => {
    const bunch = measure("kale", "bunch");
    expect(wish("kale", 2 * bunch)).toMatchObject({ unit: { grams: bunch }, count: 2 });
  });
  it("are steps of weight else, the last as large as is left, and never more than twenty", () => {
    expect(wish("spinach", 450)).toMatchObject({ unit: { grams: 100 }, count: 5 });
    expect(wish("apple", 150)).toMatchObject({ unit: { grams: 100 }, count: 2 });
    for (const grams of [2050, 7777, 123_456])
      expect(wish("potato", grams).count).toBeLessThanOrEqual(buyingRule.mostUnits);
  });
  it("are never measures of the kitchen", () => {
    const cup = measure("spinach", "cup");
    expect(wish("spinach", 4 * cup).unit.grams).not.toBeCloseTo(cup, 3);
  });
});

describe("some units of a wish", () => {
  it("are never more than the wish, and all of them are the wish itself", () => {
    for (const one of [
      wish("spinach", 450),
      wish("cherry", 360, { pieces: 40 }),
      wish("apple", 900, { pieces: 5 }),
    ]) {
      for (let units = 1; units < one.count; units++) {
        const some = unitsOf(one, units);
        expect(some.grams).toBeLessThan(one.lot.grams);
        if (some.pieces !== undefined) expect(Number.isInteger(some.pieces)).toBe(true);
      }
      expect(unitsOf(one, one.count)).toBe(one.lot);
    }
  });
});
