import { catalogue } from "@keepwright/catalogue";
import { readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { countedUnitsOf, gramsOf, piecesOf } from "../../src/state/enteredAmount.js";

const kinds = [...catalogue().commodities.values()];
const kind = (id: string) => catalogue().commodities.get(id);

describe("an amount as it was entered", () => {
  it("weighs what its unit says", () => {
    expect(gramsOf({ value: 2, unit: "lb" }, undefined)).toBeCloseTo(907.18474, 9);
    expect(gramsOf({ value: 1.5, unit: "kg" }, undefined)).toBe(1500);
    expect(gramsOf({ value: 2, unit: "bunch" }, kind("radish"))).toBe(360);
  });
  it("of pieces weighs what the reader takes as many pieces to weigh", () => {
    for (const { id, names, household } of kinds) {
      const item = readHaul(`3 ${names.en.many}`, catalogue()).items[0];
      if (item?.kind !== "lot" || item.lot.commodity !== id || item.lot.pieces !== 3) continue;
      expect(gramsOf({ value: 3, unit: "each" }, kind(id)), `${id} by ${household.countUnit}`).toBeCloseTo(
        item.lot.grams,
        6,
      );
    }
  });
  it("is none in a unit that the kind has not, or beyond what a line may weigh", () => {
    expect(gramsOf({ value: 2, unit: "zorble" }, kind("apple"))).toBeUndefined();
    expect(gramsOf({ value: 201, unit: "kg" }, undefined)).toBeUndefined();
    expect(gramsOf({ value: 0, unit: "kg" }, undefined)).toBeUndefined();
  });
  it("is counted only in whole pieces", () => {
    expect(piecesOf({ value: 3, unit: "head" })).toBe(3);
    expect(piecesOf({ value: 2, unit: "bunch" })).toBeUndefined();
    expect(piecesOf({ value: 2.5, unit: "each" })).toBeUndefined();
  });
  it("is offered only in counted units that have a weight", () => {
    for (const each of kinds)
      for (const unit of countedUnitsOf(each))
        expect(gramsOf({ value: 1, unit }, each), each.id).toBeGreaterThan(0);
  });
});
