import { normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";

/** A life as a log-normal distribution: its median [d] and the standard deviation of ln(life) [1]. */
export interface LifeDistribution {
  readonly median: number;
  readonly spread: number;
}

/** A life in days: 10 %, 50 % and 90 % of lots like it are past their best by then. */
export interface LifeDays {
  readonly early: number;
  readonly middle: number;
  readonly late: number;
}

/** Days by which 10 %, 50 % and 90 % of lots like it are past their best. Median 0 or Infinity: all three the same. */
export function lifeRange({ median, spread }: LifeDistribution): LifeDays {
  const factor = Math.exp(normalNinetiethPercentile * spread);
  return { early: median / factor, middle: median, late: median * factor };
}

/** A life that is over at the latest when a safe time is [d, ≥ 0; Infinity: no limit]: none of its three figures goes past it. */
export const lifeWithin = ({ early, middle, late }: LifeDays, safeDays: number): LifeDays => ({
  early: Math.min(early, safeDays),
  middle: Math.min(middle, safeDays),
  late: Math.min(late, safeDays),
});

/** Chance [0…1] that a lot is past its best by a day [d from the start]. Without spread: 0 before the median, 1 from it on. */
export function chancePastBest({ median, spread }: LifeDistribution, day: number): number {
  if (day <= 0) return median <= 0 ? 1 : 0;
  if (median <= 0) return 1;
  if (median === Number.POSITIVE_INFINITY) return 0;
  if (spread <= 0) return day >= median ? 1 : 0;
  return normalDistribution(Math.log(day / median) / spread);
}

/**
 * The same chance for a lot seen to be still good on an earlier day [d from the start]: the share of those good then that are past by now.
 * 0 when the day is not after it; 1 when none would still have been good.
 */
export function chancePastBestGiven(life: LifeDistribution, day: number, goodOn: number): number {
  if (day <= goodOn) return 0;
  const gone = chancePastBest(life, goodOn);
  return gone >= 1 ? 1 : (chancePastBest(life, day) - gone) / (1 - gone);
}
