import { chancePastBest, type LotOutcome } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { eatingHabits, weights } from "../rules/weights.js";

/** What a gram of a part costs, day by day and left over, split into the terms of the objective. */
export interface PartCosts {
  /** First whole day it may be eaten; Infinity when it never gets ripe. */
  readonly readyDay: number;
  /** Chance of being past its best, and quality otherwise, on each planned day. */
  readonly chancePast: readonly number[];
  readonly quality: readonly number[];
  /** The same for what is left over, on the day it is taken to be eaten. */
  readonly chancePastLeft: number;
  readonly qualityLeft: number;
  /** Share of the best life to be had in this kitchen that is lost where it lies, 0…1. */
  readonly lifeLost: number;
  /** Cost of one portion [g] on each planned day (Infinity before it is ripe), and left over. */
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
  const life = { median: outcome.endDay, spread };
  const past = (day: number): number => chancePastBest(life, day);
  const lifeLost = lifeLostShare(outcome.endDay, bestDay);
  const tie = weights.tieOfDays / (1 + Math.min(outcome.endDay, 1e4));
  const costs = new Float64Array(days);
  const chancePast: number[] = [];
  const quality: number[] = [];
  for (let day = 0; day < days; day++) {
    const chance = past(day);
    const worth = outcome.quality[day] ?? 0;
    chancePast.push(chance);
    quality.push(worth);
    costs[day] =
      day < readyDay
        ? Number.POSITIVE_INFINITY
        : lot.gramsPerPortion * (gramCost(chance, worth) + weights.lifeLostEaten * lifeLost + tie * day);
  }
  const leftDay = days - 1 + eatingHabits.leftOverDays;
  const chancePastLeft = past(leftDay);
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
