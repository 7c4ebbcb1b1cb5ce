import { chancePastBestGiven, type LotOutcome } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { daysBefore, wholeLife, wholeLifeOf } from "../rules/lifeLeft.js";
import { firstReadyDay } from "../rules/readyToEat.js";
import { eatingHabits, weights } from "../rules/weights.js";
import { wishCostsOf } from "./wishCosts.js";

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
  /** Cost of a gram that is not as wanted, for each planned day and left over [g]; 0 where nothing is wanted. */
  readonly wishMissed: readonly number[];
  readonly wishMissedLeft: number;
  /** Cost of one portion [g] on each planned day (Infinity before it is ripe, once it is no longer safe, and on days away), and left over. */
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
 * Chances of being past its best on each day from the first to the last on which something planned may be eaten. What is no longer safe is
 * thrown away, however good it looks.
 */
function chances(
  lot: BoundLot,
  outcome: LotOutcome,
  spread: number,
  days: number,
  lastSafe: number,
): number[] {
  const last = days - 1 + Math.max(eatingHabits.lateDays, eatingHabits.leftOverDays);
  const life = wholeLifeOf(lot, outcome, spread);
  const before = daysBefore(lot);
  const goodOn = lot.carried?.seenGoodOn ?? 0;
  const past: number[] = [];
  for (let day = 0; day <= last; day++)
    past.push(day > lastSafe ? 1 : chancePastBestGiven(life, before + day, goodOn));
  return past;
}

/**
 * Quality of what is not past its best, for a portion planned for a day, given the chances: some portions are eaten late
 * (`eatingHabits.lateShare`, `lateDays`). Quality stays as on the last simulated day beyond it.
 */
function qualityWhenEaten({ quality }: LotOutcome, past: readonly number[], day: number): number {
  const { lateShare, lateDays } = eatingHabits;
  const last = quality.length - 1;
  const onTime = (1 - lateShare) * (1 - past[day]!);
  const late = lateShare * (1 - past[day + lateDays]!);
  const good = onTime + late;
  if (good <= 0) return 0;
  return (onTime * (quality[day] ?? 0) + late * (quality[Math.min(day + lateDays, last)] ?? 0)) / good;
}

/**
 * What eating a part costs.
 *
 * What is left over is judged `eatingHabits.leftOverDays` after the last
 * planned day, by the quality of the last simulated day.
 *
 * @param bestDay longest median life this lot could have in this kitchen [d]
 * @param lastSafe last day on which it may be eaten at all (`lastSafeDay`)
 * @param ripeningSpread standard deviation of ln(time to ripen) [1], which only a wish asks for
 */
export function partCosts(
  lot: BoundLot,
  outcome: LotOutcome,
  spread: number,
  bestDay: number,
  household: Household,
  lastSafe = Number.POSITIVE_INFINITY,
  ripeningSpread = spread,
): PartCosts {
  const { days } = household;
  const readyDay = firstReadyDay(outcome.ripeDay);
  const { lateShare, lateDays } = eatingHabits;
  const past = chances(lot, outcome, spread, days, lastSafe);
  const lifeLost = lifeLostShare(wholeLife(lot, outcome.endDay), wholeLife(lot, bestDay));
  const tie = weights.tieOfDays / (1 + Math.min(outcome.endDay, 1e4));
  const wish = wishCostsOf(lot, outcome, { life: spread, ripening: ripeningSpread }, household, lastSafe);
  const costs = new Float64Array(days);
  const chancePast: number[] = [];
  const quality: number[] = [];
  for (let day = 0; day < days; day++) {
    const chance = (1 - lateShare) * past[day]! + lateShare * past[day + lateDays]!;
    const good = qualityWhenEaten(outcome, past, day);
    chancePast.push(chance);
    quality.push(good);
    costs[day] =
      day < readyDay || day > lastSafe || household.daysAway.includes(day)
        ? Number.POSITIVE_INFINITY
        : lot.gramsPerPortion *
          (gramCost(chance, good) + weights.lifeLostEaten * lifeLost + wish.missed[day]! + tie * day);
  }
  const leftDay = days - 1 + eatingHabits.leftOverDays;
  const chancePastLeft = past[leftDay]!;
  const qualityLeft = outcome.quality[days] ?? 0;
  const leftGram =
    gramCost(chancePastLeft, qualityLeft) +
    weights.lifeLostLeft * lifeLost +
    weights.uneatenLeft +
    wish.missedLeft +
    tie * leftDay;
  return {
    readyDay,
    chancePast,
    quality,
    chancePastLeft,
    qualityLeft,
    lifeLost,
    wishMissed: wish.missed,
    wishMissedLeft: wish.missedLeft,
    costs,
    costLeft: lot.gramsPerPortion * leftGram,
  };
}
