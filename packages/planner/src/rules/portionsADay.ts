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

/**
 * Portions set on the table on each planned day; none on days away. Never more than the household eats a day, and no more than spreads the haul over the
 * planned days: people make what they bought last, they do not eat it all by Tuesday because they could.
 *
 * @param portions portions of the whole haul that take a place at the table (no seasonings)
 */
export function placesAtTable(household: Household, portions: number): number[] {
  const away = new Set(household.daysAway);
  const seats = Math.min(
    mostPortionsADay(household),
    Math.max(household.people, spreadOver(portions, household)),
  );
  return Array.from({ length: household.days }, (_, day) => (away.has(day) ? 0 : seats));
}

/** Hard rule: most portions of one lot on one day, so that nobody eats cabbage only; seasonings are spread like the haul. */
export function dailyLimit(lot: BoundLot, household: Household): number {
  if (!lot.commodity.household.seasoning) return household.people * eatingHabits.portionsOfOneLot;
  const most = household.people * eatingHabits.portionsOfOneSeasoning;
  return Math.min(most, Math.max(1, spreadOver(lot.portions, household)));
}
