import type { Commodity } from "@keepwright/catalogue";
import type { UnitSystem } from "@keepwright/handout";
import { countedUnitsOf, type EnteredAmount, gramsOf, gramsPerUnit } from "./enteredAmount.js";
import type { ReadLine } from "./readLots.js";

/** Words by which a unit of mass can be told from what was typed. */
const massWords: readonly (readonly [string, RegExp])[] = [
  ["kg", /\d\s*(?:kg|kgs|kilos?|kilogra\w*)\b/iu],
  ["lb", /\b(?:lbs?|pounds?|libras?)\b|\dlbs?\b/iu],
  ["oz", /\b(?:oz|ounces?|onzas?)\b|\doz\b/iu],
  ["g", /\d\s*(?:g|gr|grams?|gramos?)\b/iu],
];

/** Units offered for a kind: those it is counted in, then those of mass in the system shown. */
export function offeredUnits(
  commodity: Commodity | undefined,
  mass: UnitSystem,
  now: EnteredAmount | undefined,
): readonly string[] {
  const offered = [...countedUnitsOf(commodity), ...(mass === "us" ? ["oz", "lb"] : ["g", "kg"])];
  return now && !offered.includes(now.unit) ? [now.unit, ...offered] : offered;
}

const rounded = (value: number): number => Number(value.toPrecision(value < 100 ? 2 : 3));

/** The same amount in another unit, to as many figures as an amount of food has; at least one piece. */
export function inUnit(
  amount: EnteredAmount,
  unit: string,
  commodity: Commodity | undefined,
): EnteredAmount | undefined {
  const grams = gramsOf(amount, commodity);
  const one = gramsOf({ value: 1, unit }, commodity);
  if (grams === undefined || one === undefined) return undefined;
  const value = grams / one;
  return { value: Object.hasOwn(gramsPerUnit, unit) ? rounded(value) : Math.max(1, Math.round(value)), unit };
}

/** As many figures behind the mark as anybody writes of a kilogram or a pound; what was typed is shown as it was typed. */
const mostDecimals = 3;

/** The amount in the unit it was typed in, which lost nothing by being weighed. */
function asTyped(grams: number, unit: string): EnteredAmount {
  return { value: Number((grams / (gramsPerUnit[unit] ?? 1)).toFixed(mostDecimals)), unit };
}

/** Writes the number of an amount for readers of a BCP 47 tag; without marks between thousands, that may be taken for decimals. */
export const amountWords = (value: number, tag: string): string =>
  new Intl.NumberFormat(tag, { maximumFractionDigits: mostDecimals, useGrouping: false }).format(value);

/** The amount of a line as the person thinks of it: as entered, as typed, or in the units shown. */
export function shownAmount(
  line: ReadLine,
  commodity: Commodity | undefined,
  mass: UnitSystem,
): EnteredAmount | undefined {
  if (line.correction?.amount) return line.correction.amount;
  const { lot } = line;
  if (!lot) return undefined;
  if (lot.pieces !== undefined) return { value: lot.pieces, unit: countedUnitsOf(commodity)[0] ?? "each" };
  const grams = { value: lot.grams, unit: "g" };
  const named = massWords.find(([, words]) => words.test(line.item.typed))?.[0];
  const usual = mass === "us" ? (lot.grams < 450 ? "oz" : "lb") : lot.grams < 1000 ? "g" : "kg";
  return named === undefined ? inUnit(grams, usual, commodity) : asTyped(lot.grams, named);
}

const steps: Readonly<Record<string, number>> = { g: 50, kg: 0.25, oz: 1, lb: 0.25 };

/** One step more or less; undefined where nothing would be left. */
export function stepped({ value, unit }: EnteredAmount, direction: 1 | -1): EnteredAmount | undefined {
  const step = (Object.hasOwn(steps, unit) ? steps[unit] : undefined) ?? 1;
  const next = Math.round((value + direction * step) * 1000) / 1000;
  return next > 0 ? { value: next, unit } : undefined;
}
