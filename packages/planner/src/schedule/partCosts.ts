import { chancePastBest, type LotOutcome } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { eatingHabits, weights } from "../rules/weights.js";

/** What a gram of a part costs, day by day and left over, split into the terms of the objective. */
export interface PartCosts {
  /** First whole day it may be eaten; Infinity when it never gets ripe. */
  readonly readyDay: number;
  /** For a portion planned for each day: chance that it is past its best when eaten, and its quality otherwise. */
  readonly chancePast: readonly number[];
  readonly quality: readonly number[];
  /** The same for what is left over, on the day it is taken to be eaten. */
  readonly chancePastLeft: number;
  readonly qualityLeft: number;
  /** Share of the best life to be had in this kitchen that is lost where it lies, 0…1. */
  readonly lifeLost: number;
  /** Cost of one portion [g] on each planned day (Infinity before it is ripe and on days away), and left over. */
  readonly costs: Float64Array;
  readonly costLeft: number;
}

/** Share lost of the best life to be had. */
export const lifeLostShare = (endDay: number, bestDay: number): number =>
  bestDay > 0 && endDay < bestDay ? 1 - endDay / bestDay : 0;

/** Cost of a gram that is past its best with this chance, and otherwise of this quality. */
export const gramCost = (chancePast: number, quality: number): number =>
  chancePast + (1 - chancePast) * (1 - quality) * weights.qualityLost;

/**
 * Chance past its best, and quality of what is not, for a portion planned for a day: some portions are eaten late
 * (`eatingHabits.lateShare`, `lateDays`). Quality stays as on the last simulated day beyond it.
 */
function whenEaten(outcome: LotOutcome, spread: number, days: number) {
  const { lateShare, lateDays } = eatingHabits;
  const life = { median: outcome.endDay, spread };
  const qualityOn = (day: number): number => outcome.quality[Math.min(day, days)] ?? 0;
  const past = (day: number): number =>
    (1 - lateShare) * chancePastBest(life, day) + lateShare * chancePastBest(life, day + lateDays);
  const worth = (day: number): number => {
    const onTime = (1 - lateShare) * (1 - chancePastBest(life, day));
    const late = lateShare * (1 - chancePastBest(life, day + lateDays));
    const good = onTime + late;
    return good > 0 ? (onTime * qualityOn(day) + late * qualityOn(day + lateDays)) / good : 0;
  };
  return { past, worth };
}

/**
 * What eating a part costs.
 *
 * What is left over is judged `eatingHabits.leftOverDays` after the last
 * planned day, by the quality of the last simulated day.
 *
 * @param bestDay longest median life this lot could have in this kitchen [d]
 */
export function partCosts(
  lot: BoundLot,
  outcome: LotOutcome,
  spread: number,
  bestDay: number,
  household: Household,
): PartCosts {
  const { days } = household;
  const readyDay = firstReadyDay(outcome.ripeDay);
  const { past, worth } = whenEaten(outcome, spread, days);
  const lifeLost = lifeLostShare(outcome.endDay, bestDay);
  const tie = weights.tieOfDays / (1 + Math.min(outcome.endDay, 1e4));
  const costs = new Float64Array(days);
  const chancePast: number[] = [];
  const quality: number[] = [];
  for (let day = 0; day < days; day++) {
    const chance = past(day);
    const good = worth(day);
    chancePast.push(chance);
    quality.push(good);
    costs[day] =
      day < readyDay || household.daysAway.includes(day)
        ? Number.POSITIVE_INFINITY
        : lot.gramsPerPortion * (gramCost(chance, good) + weights.lifeLostEaten * lifeLost + tie * day);
  }
  const leftDay = days - 1 + eatingHabits.leftOverDays;
  const chancePastLeft = chancePastBest({ median: outcome.endDay, spread }, leftDay);
  const qualityLeft = outcome.quality[days] ?? 0;
  const leftGram = gramCost(chancePastLeft, qualityLeft) + weights.lifeLostLeft * lifeLost + tie * leftDay;
  return {
    readyDay,
    chancePast,
    quality,
    chancePastLeft,
    qualityLeft,
    lifeLost,
    costs,
    costLeft: lot.gramsPerPortion * leftGram,
  };
}
