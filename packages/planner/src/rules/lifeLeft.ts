import {
  chancePastBestGiven,
  type Ending,
  type LifeDays,
  type LifeDistribution,
  type LotOutcome,
  lifeRange,
  publishedTime,
} from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";

/** Days from which the life of a lot is counted to the first day: 0 for what has just come home. */
export const daysBefore = ({ carried }: Pick<BoundLot, "carried">): number => carried?.daysBefore ?? 0;

/**
 * Middle life [d] of a lot from the day its life is counted from, given the day on which a simulation ends it. What an earlier simulation had ended already keeps the day of
 * that end, which the new one cannot know.
 */
export const wholeLife = ({ carried }: Pick<BoundLot, "carried">, endDay: number): number =>
  carried === undefined ? endDay : carried.daysBefore + (carried.ended ? -carried.ended.daysBefore : endDay);

/**
 * The published time [d] that a lot's life with a programme was worked out from (`publishedTime`), in the place where it lies last. What an earlier simulation had
 * ended keeps what ended it then.
 */
export const startedFrom = (
  { places }: Pick<Problem, "places">,
  { produce, form, carried }: BoundLot,
  { stays }: Programme,
  endedBy: Ending,
): number =>
  publishedTime(produce, form, carried?.ended?.by ?? endedBy, places[stays.at(-1)!.place]!.place.temperature);

/** The life of a lot as a distribution, counted from the day its life is counted from. */
export const wholeLifeOf = (
  lot: Pick<BoundLot, "carried">,
  { endDay }: Pick<LotOutcome, "endDay">,
  spread: number,
): LifeDistribution => ({ median: wholeLife(lot, endDay), spread });

/**
 * Chance [0…1] that a lot is past its best by a day [d from the first]. Of what an earlier plan left, that of the life it has had since it came home, so that a chance does not
 * change because a plan is carried on; where somebody has seen it good since, the chance given that it was.
 */
export const chancePastBy = (
  lot: Pick<BoundLot, "carried">,
  outcome: Pick<LotOutcome, "endDay">,
  spread: number,
  day: number,
): number =>
  chancePastBestGiven(wholeLifeOf(lot, outcome, spread), daysBefore(lot) + day, lot.carried?.seenGoodOn ?? 0);

/** Longest stretch looked through for a day [d]: beyond what any plan names. */
const longest = 20_000;
const halvings = 60;

/** The day [d from the first, ≥ 0] by which a share of lots like it are past their best, where it was seen good: found by halving. */
function dayOfChance(chanceBy: (day: number) => number, share: number): number {
  let [low, high] = [0, longest];
  if (chanceBy(low) >= share) return low;
  for (let step = 0; step < halvings; step++) {
    const middle = 0.5 * (low + high);
    if (chanceBy(middle) < share) low = middle;
    else high = middle;
  }
  return high;
}

const tenth = 0.1;

/** Days from the first by which 10 %, 50 % and 90 % of lots like it are past their best: 0 where they are by then. */
export function lifeLeft(
  lot: Pick<BoundLot, "carried">,
  outcome: Pick<LotOutcome, "endDay">,
  spread: number,
): LifeDays {
  const { carried } = lot;
  const whole = lifeRange(wholeLifeOf(lot, outcome, spread));
  if (!carried) return whole;
  if (carried.seenGoodOn > 0) {
    const by = (share: number) => dayOfChance((day) => chancePastBy(lot, outcome, spread, day), share);
    return { early: by(tenth), middle: by(0.5), late: by(1 - tenth) };
  }
  const left = (days: number): number => Math.max(0, days - carried.daysBefore);
  return { early: left(whole.early), middle: left(whole.middle), late: left(whole.late) };
}
