import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { eatingHabits } from "./weights.js";

/** Hard rule: portions the household eats on each planned day, none on days away, whole and at least one otherwise. */
export function placesAtTable(household: Household): number[] {
  const away = new Set(household.daysAway);
  const portions = Math.max(1, Math.floor(household.people * household.portionsPerPersonPerDay));
  return Array.from({ length: household.days }, (_, day) => (away.has(day) ? 0 : portions));
}

/** Hard rule: most portions of one lot on one day, so that nobody eats cabbage only. */
export const dailyLimit = (lot: BoundLot, household: Household): number =>
  household.people *
  (lot.commodity.household.seasoning ? eatingHabits.portionsOfOneSeasoning : eatingHabits.portionsOfOneLot);
