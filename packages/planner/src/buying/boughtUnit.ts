import type { Catalogue, Commodity } from "@keepwright/catalogue";
import type { Lot } from "../problem/lot.js";
import { buyingRule } from "./declared.js";

/** A wished lot, and the units it is bought in. */
export interface Wish {
  readonly lot: Lot;
  /** One unit: so many grams, and pieces where they are counted. */
  readonly unit: { readonly grams: number; readonly pieces?: number };
  /** Units in the whole wish; the last may be smaller than the others. */
  readonly count: number;
}

/** Measures people buy whole. A cup, a stalk or a leaf is a measure of the kitchen, not of the shop. */
const soldWhole =
  /^(each|head|heart|bulb|bunch|bag|package|clamshell|pint|basket|tray|box|sack|hand|cluster|knob|ear)\b/;

/** How nearly a mass must be a whole number of a measure to be taken for it [share of the measure]. */
const nearlyWhole = 0.005;

/** Grams of the largest measure sold whole of which the lot is a whole number: "2 bunches" is nowhere else kept than in its mass. */
function measureOf({ grams }: Lot, { household }: Commodity): number | undefined {
  const fits = household.units
    .filter(({ name }) => soldWhole.test(name))
    .map((unit) => unit.grams)
    .filter((each) => {
      const count = Math.round(grams / each);
      return count >= 1 && count <= buyingRule.mostUnits && Math.abs(grams / each - count) <= nearlyWhole;
    });
  return fits.length === 0 ? undefined : Math.max(...fits);
}

/** A step of weight that people weigh out: 1, 2 or 5 times a power of ten, and not more than `mostUnits` of them. */
function stepFor(grams: number, least: number): number {
  let step = least;
  for (let at = 0; grams / step > buyingRule.mostUnits; at++) step *= [2, 2.5, 2][at % 3]!;
  return step;
}

/**
 * The units a wish is bought in: whole pieces where they were counted (small ones by the portion); whole bunches, bags and the like where its mass is a
 * whole number of them; else steps of weight.
 *
 * @param stepGrams least step of weight [g]
 */
export function wishOf(lot: Lot, catalogue: Catalogue, stepGrams: number): Wish {
  const commodity = catalogue.commodities.get(lot.commodity)!;
  if (lot.pieces !== undefined) {
    const each = lot.grams / lot.pieces;
    const atLeast = Math.ceil(lot.pieces / buyingRule.mostUnits);
    const portion = Math.ceil(commodity.household.portion.value / each - nearlyWhole);
    const pieces = Math.min(lot.pieces, Math.max(1, atLeast, portion));
    return { lot, unit: { grams: pieces * each, pieces }, count: Math.ceil(lot.pieces / pieces) };
  }
  const measure = lot.form === "cut" ? undefined : measureOf(lot, commodity);
  const grams = Math.min(lot.grams, measure ?? stepFor(lot.grams, stepGrams));
  return { lot, unit: { grams }, count: Math.ceil(lot.grams / grams - nearlyWhole) };
}

/** Some units of a wish as a lot; all of them are the wish itself. */
export function unitsOf({ lot, unit, count }: Wish, units: number): Lot {
  if (units >= count) return lot;
  if (unit.pieces === undefined) return { ...lot, grams: unit.grams * units };
  const pieces = unit.pieces * units;
  return { ...lot, pieces, grams: (lot.grams * pieces) / lot.pieces! };
}
