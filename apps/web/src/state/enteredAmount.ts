import type { Commodity } from "@keepwright/catalogue";
import { gramsPerOunce, gramsPerPound } from "@keepwright/quantities";

/** An amount in the unit the person thinks in: "g", "kg", "oz", "lb", or a household unit of the kind ("each", "bunch"). */
export interface EnteredAmount {
  readonly value: number;
  readonly unit: string;
}

/** Most that one line may weigh [g], as the planner's lots have it. */
export const mostGrams = 200_000;

/** Grams of the units of mass that are offered, exact. */
export const gramsPerUnit: Readonly<Record<string, number>> = {
  g: 1,
  kg: 1000,
  oz: gramsPerOunce,
  lb: gramsPerPound,
};

/** Units of which the kind may be counted, and offered in this order; other household units can be typed. */
const countedUnits = ["each", "head", "bulb", "ear", "hand", "piece", "bunch"] as const;
export type CountedUnit = (typeof countedUnits)[number];
/** Every unit in which an amount can be entered. */
export const amountUnits: readonly string[] = [...Object.keys(gramsPerUnit), ...countedUnits];
const wholePieces: readonly string[] = ["each", "head", "bulb", "ear", "piece"];

const isCounted = (name: string): name is CountedUnit => countedUnits.some((unit) => unit === name);

/** "each" of "each small": a unit without its size. */
const baseOf = (name: string): string => name.split(" ")[0] ?? name;

/** Units in which the kind is counted, usual first: at most two, so that they fit beside those of mass. */
export function countedUnitsOf(commodity: Commodity | undefined): readonly CountedUnit[] {
  if (!commodity) return [];
  const { units, countUnit, bareUnit } = commodity.household;
  const count = baseOf(countUnit);
  const own = [countUnit, bareUnit, ...units.map(({ name }) => name)];
  const known = own.filter((name) => units.some((unit) => unit.name === name)).map(baseOf);
  const others = known.filter(isCounted).filter((name) => name !== "each");
  // Spears, stalks and leaves are called pieces.
  return [...new Set(isCounted(count) ? [count, ...others] : (["each", ...others] as const))].slice(0, 2);
}

/** The kind's own unit of that name: as it usually comes where the kind has several sizes of it. */
function householdUnit(unit: string, { household }: Commodity) {
  const { units, countUnit, bareUnit } = household;
  const named = (name: string) => units.find((each) => each.name === name);
  const usual = [countUnit, bareUnit, `${unit} medium`].filter((name) => baseOf(name) === unit);
  return (
    named(unit) ??
    usual.map(named).find((found) => found !== undefined) ??
    units.find(({ name }) => baseOf(name) === unit)
  );
}

/** Grams of one. "each" is whatever a bare count of the kind means to the reader: a head, a spear, a middling one. */
function gramsOfOne(unit: string, commodity: Commodity | undefined): number | undefined {
  const mass = Object.hasOwn(gramsPerUnit, unit) ? gramsPerUnit[unit] : undefined;
  if (mass !== undefined || !commodity) return mass;
  return householdUnit(unit === "each" ? commodity.household.countUnit : unit, commodity)?.grams;
}

/** Grams of the amount; undefined where the kind has no such unit, or it is none that can be. */
export function gramsOf(
  { value, unit }: EnteredAmount,
  commodity: Commodity | undefined,
): number | undefined {
  const one = gramsOfOne(unit, commodity);
  const grams = one === undefined ? Number.NaN : value * one;
  return grams > 0 && grams <= mostGrams ? grams : undefined;
}

/** Whole pieces, where it was counted in them. */
export const piecesOf = ({ value, unit }: EnteredAmount): number | undefined =>
  wholePieces.includes(unit) && Number.isInteger(value) && value > 0 ? value : undefined;

/** Whether two amounts are the same number of the same unit. */
export const sameAmount = (one: EnteredAmount | undefined, other: EnteredAmount | undefined): boolean =>
  one?.value === other?.value && one?.unit === other?.unit;
