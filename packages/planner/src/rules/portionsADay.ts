import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { eatingHabits } from "./weights.js";

const daysAtHome = ({ days, daysAway }: Household): number =>
  Math.max(1, days - new Set(daysAway.filter((day) => day < days)).size);

/** Portions a day that finish `portions` a little before the planned days are over, so that a haul lasts until the next one. */
const spreadOver = (portions: number, household: Household): number =>
  Math.ceil((eatingHabits.aheadOfEven * portions) / daysAtHome(household));

/** Hard rule: the most portions the household eats on one day, whole and at least one. */
export const mostPortionsADay = ({ people, portionsPerPersonPerDay }: Household): number =>
  Math.max(1, Math.floor(people * portionsPerPersonPerDay));

/** Hard rule: portions that can be eaten on each planned day, whole and at least one; none on days away. */
export function placesAtTable(household: Household): number[] {
  const away = new Set(household.daysAway);
  const places = mostPortionsADay(household);
  return Array.from({ length: household.days }, (_, day) => (away.has(day) ? 0 : places));
}

/**
 * Soft rule: portions a day at which a haul lasts until the next one. People make what they bought last and do not eat it all by Tuesday because they could; each portion
 * above it costs `weights.aheadOfPace`, little enough that nothing is let spoil to keep to it.
 *
 * @param portions portions of the whole haul that take a place at the table (no seasonings)
 * @param kept pace of an earlier plan that is carried on: what it had meant to eat is not ahead of pace now
 */
export const pacePerDay = (household: Household, portions: number, kept = 0): number =>
  Math.min(mostPortionsADay(household), Math.max(household.people, spreadOver(portions, household), kept));

/** Hard rule: most portions of one lot on one day, so that nobody eats cabbage only; seasonings are spread like the haul. */
export function dailyLimit(lot: BoundLot, household: Household): number {
  if (!lot.seasoning) return household.people * eatingHabits.portionsOfOneLot;
  const most = household.people * eatingHabits.portionsOfOneSeasoning;
  // The limit of the whole lot as it came home holds on: with less left over fewer days it would fall, and a plan could not be kept to.
  if (lot.carried) return Math.min(most, lot.carried.mostADay);
  return Math.min(most, Math.max(1, spreadOver(lot.portions, household)));
}
