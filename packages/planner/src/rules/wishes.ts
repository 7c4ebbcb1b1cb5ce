import { at, chancePastBest, type LifeDays, type LotOutcome, lifeRange } from "@keepwright/physics";
import type { Wish } from "../problem/wish.js";
import { weights } from "./weights.js";

/**
 * When lots like one get ready: `shift` + a log-normal time with this median [d] and spread of its logarithm [1]. Median 0: it came ready;
 * Infinity: it never is.
 */
export interface Readiness {
  readonly shift: number;
  readonly median: number;
  readonly spread: number;
}

/** Share of ripening that must be left for a later stay to be told from none. */
const leastLeft = 0.01;

/**
 * The middle of when a lot gets ready, in two parts. A lot held first and brought out on a day ripens at its own pace in both stays, so what differs
 * between quick and slow lots is the time ripening takes at the pace of the last stay, and not the day it is brought out.
 *
 * @param arrived ripeness on arrival
 */
export function middleOfReady(
  { ripeDay, stayStarts, daily }: LotOutcome,
  arrived: number,
): Omit<Readiness, "spread"> {
  const broughtOut = stayStarts.findLast((start) => start < ripeDay) ?? 0;
  if (broughtOut <= 0 || !Number.isFinite(ripeDay)) return { shift: 0, median: ripeDay };
  const then = daily[Math.floor(broughtOut)]?.[at.ripeness] ?? arrived;
  const done = Math.min(1 - leastLeft, Math.max(0, (then - arrived) / Math.max(leastLeft, 1 - arrived)));
  const median = (ripeDay - broughtOut) / (1 - done);
  return { shift: broughtOut - done * median, median };
}

/** When lots like one are ready, as it is told; nothing where it never is. */
export function readyDays({ shift, median, spread }: Readiness): LifeDays | undefined {
  if (!Number.isFinite(median)) return undefined;
  const { early, middle, late } = lifeRange({ median, spread });
  return { early: shift + early, middle: shift + middle, late: shift + late };
}

/** Chance that a lot is ready on a day. */
export const chanceReady = ({ shift, median, spread }: Readiness, day: number): number =>
  median <= 0 ? 1 : chancePastBest({ median, spread }, day - shift);

/** A lot's life and when it gets ready, and the chance that it is past its best by a day. */
export interface Prospects {
  readonly readiness: Readiness;
  readonly pastBy: (day: number) => number;
}

/**
 * Chance that a portion eaten on a day is as wanted: ready when it was wanted, not past its best then, and not gone before. What ripens slowly also
 * keeps longer, so a lot past its best is one of those that were ready: the one chance is taken from the other.
 */
export function chanceAsWanted(wish: Wish, { readiness, pastBy }: Prospects, day: number): number {
  if (day < wish.first) return 0;
  const ready = chanceReady(readiness, Number.isFinite(wish.last) ? wish.last : day);
  return Math.max(0, ready - pastBy(Math.min(day, wish.last)));
}

/** Chance from which something is taken to be so: as likely as not, as wherever a plan says that a thing is ready. */
const asLikelyAsNot = 0.5;

/** Whether it should be ready in time for a portion eaten on a day. */
export const isReadyInTime = (wish: Wish, { readiness }: Prospects, day: number): boolean =>
  chanceReady(readiness, Number.isFinite(wish.last) ? wish.last : day) >= asLikelyAsNot - rounding;

/** Rounding of a chance worked out from its own middle [1]. */
const rounding = 1e-9;

/** Whether a portion eaten on a day should be as wanted: ready in time, good when it is wanted, not gone before. */
export const isAsWanted = (wish: Wish, prospects: Prospects, day: number): boolean =>
  day >= wish.first &&
  isReadyInTime(wish, prospects, day) &&
  prospects.pastBy(Math.min(day, wish.last)) < asLikelyAsNot;

/**
 * The day [d] that stands for a portion left over, which is taken to be eaten on `leftDay`: one wanted for a day after the planned ones, or from
 * a day that is later still, is kept till then.
 */
export function dayIfLeft({ first, last }: Wish, days: number, leftDay: number): number {
  if (Number.isFinite(last)) return last >= days ? last : leftDay;
  return Math.max(leftDay, first);
}

/**
 * Soft rule: what a gram costs that is wanted, and eaten on this day. Missing by a day is better than by a week, so that what cannot be had in time is
 * had as soon as can be.
 */
export function wishCost(wish: Wish, prospects: Prospects, day: number): number {
  const { shift, median } = prospects.readiness;
  const late = (time: number): number =>
    time > wish.last ? Math.min(weights.mostDaysLate, time - wish.last) : 0;
  return (
    weights.wishMissed * (1 - chanceAsWanted(wish, prospects, day)) +
    weights.dayReadyLate * late(shift + median) +
    weights.dayEatenLate * late(day)
  );
}
