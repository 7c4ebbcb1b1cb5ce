import type { OptimisticWay } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { chancePastBy, wholeLife } from "../rules/lifeLeft.js";
import { eatingHabits, weights } from "../rules/weights.js";
import { gramCost, lifeLostShare } from "../schedule/partCosts.js";

/** The least a portion of a lot can cost [g], eaten on each planned day (Infinity where it cannot be) or left over. */
export interface LeastCosts {
  readonly onDay: Float64Array;
  readonly left: number;
}

/**
 * The least a portion can cost where a lot lasts at most so long and is at most so good. Sound because what eating costs (`partCosts`) only falls with the life
 * and with the quality; the preference among days that cost the same, which is not reported, is left out.
 *
 * @param spread standard deviation of ln(life)
 * @param bestDay longest life the lot could have alone [d]
 * @param lastSafe last day on which it may be eaten
 */
export function leastCosts(
  { household }: Problem,
  lot: BoundLot,
  { endDay, quality, readyDay }: OptimisticWay,
  spread: number,
  bestDay: number,
  lastSafe: number,
): LeastCosts {
  const { days, daysAway } = household;
  const { lateShare, lateDays, leftOverDays } = eatingHabits;
  // Sums in another order may differ in the last digits.
  const longest = { endDay: endDay * (1 + 1e-9) };
  const past = (day: number): number => (day > lastSafe ? 1 : chancePastBy(lot, longest, spread, day));
  const good = (day: number): number => Math.min(1, quality[Math.min(day, days)]! + 1e-9);
  const lost = lifeLostShare(wholeLife(lot, longest.endDay), wholeLife(lot, bestDay));
  const onDay = new Float64Array(days).fill(Number.POSITIVE_INFINITY);
  for (let day = 0; day < days; day++) {
    if (day < readyDay || day > lastSafe || daysAway.includes(day)) continue;
    const onTime = gramCost(past(day), good(day));
    const late = gramCost(past(day + lateDays), good(day + lateDays));
    onDay[day] =
      lot.gramsPerPortion * ((1 - lateShare) * onTime + lateShare * late + weights.lifeLostEaten * lost);
  }
  const left =
    gramCost(past(days - 1 + leftOverDays), good(days)) + weights.lifeLostLeft * lost + weights.uneatenLeft;
  return { onDay, left: lot.gramsPerPortion * left };
}
