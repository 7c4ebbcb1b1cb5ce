import type { BoundLot } from "../problem/bindHaul.js";

/** A meal of a part: its day and its portions. */
interface Meal {
  readonly day: number;
  readonly portions: number;
}

/** A whole piece that is begun on one day and lasts for more: what is left of it is cut from then on. */
export interface CutOpen {
  /** Day of its first portion [d from the first]. */
  readonly day: number;
  /** Last day on which it may be eaten [d from the first]; absent where no limit binds. */
  readonly lastSafeDay?: number;
  /** Portions of it that are planned for a later day, or left over beyond it. */
  readonly portionsAfter: number;
}

/** Pieces of these are broken off, not cut (common practice, no source): cloves and stalks. */
const brokenOff = new Set(["clove", "stalk"]);
/** Whether a piece of a lot comes apart by hand, so that what is left of it is whole. */
export const breaksApart = ({ commodity }: BoundLot): boolean =>
  commodity.household.units.some(({ name }) => brokenOff.has(name));

/**
 * Whole pieces of several portions that are not eaten on one day. Under time and temperature control they may be eaten for as long as anything cut, the day of cutting
 * counted as the first.
 *
 * @param lastDay last planned day: what is left is there for longer
 * @param readyToEatDays days that what is cut may be kept, the first counted: the catalogue's safety limit
 */
export function piecesCutOpen(
  lot: BoundLot,
  portions: number,
  meals: readonly Meal[],
  lastDay: number,
  readyToEatDays: number,
): CutOpen[] {
  if (lot.form.cut || lot.splitUnit < 2 || breaksApart(lot)) return [];
  const days = meals.flatMap((meal) => Array.from({ length: meal.portions }, () => meal.day));
  const begun = Array.from({ length: Math.ceil(days.length / lot.splitUnit) }, (_, piece) => piece);
  return begun.flatMap((piece): CutOpen[] => {
    const first = piece * lot.splitUnit;
    const size = Math.min(lot.splitUnit, portions - first);
    const eaten = days.slice(first, first + size);
    const [day] = eaten;
    if (day === undefined || (eaten.length === size && eaten.at(-1) === day)) return [];
    if (!lot.produce.timeTemperatureControl) return [{ day, portionsAfter: 0 }];
    const lastSafeDay = day + readyToEatDays - 1;
    const late = eaten.filter((when) => when > lastSafeDay).length;
    const left = lastDay >= lastSafeDay ? size - eaten.length : 0;
    return [{ day, lastSafeDay, portionsAfter: late + left }];
  });
}
