import type { Household } from "../../problem/kitchen.js";

/** The days of a household from a day on, counted from there; up to a day where that is given. */
export function daysBetween(household: Household, from: number, to: number): Household {
  return {
    ...household,
    days: to - from,
    daysAway: household.daysAway.filter((day) => day >= from && day < to).map((day) => day - from),
  };
}

const someHome = ({ days, daysAway }: Household): boolean =>
  Array.from({ length: days }, (_, day) => day).some((day) => !daysAway.includes(day));

/**
 * Day of the second shop [d from the first]: the middle of the planned days, or the first day after it on which somebody is at home. Undefined where
 * nobody eats at home before it or from it on.
 */
export function middleDay(household: Household): number | undefined {
  const { days, daysAway } = household;
  let day = Math.ceil(days / 2);
  while (day < days && daysAway.includes(day)) day++;
  if (day >= days) return undefined;
  return someHome(daysBetween(household, 0, day)) ? day : undefined;
}
