import { endingProgress } from "../produce/ending.js";
import { endings, at as position, stateNames } from "../produce/lotState.js";
import { quality } from "../produce/quality.js";
import type { RunningLot } from "../simulate/runningLot.js";
import { type AirRanges, windowAt } from "./airRanges.js";
import type { RipeningTime } from "./ripeningTime.js";
import type { StayInRange } from "./stayInRange.js";

/** The best that can become of a lot in air known only within bounds: no simulation in such air ends it later, or leaves it better. */
export interface OptimisticCourse {
  /** Latest day it ends [d]; Infinity beyond `furthestDay`. */
  readonly endDay: number;
  /** Quality 0…1 at each whole day 0…horizon, at most. */
  readonly quality: readonly number[];
}

/** Days [d] after which an end counts as never. The catalogue's schema accepts no life beyond 400. */
export const furthestDay = 400;

/** Share by which doses may differ because the stepper adds them up in other steps: a limit is not to be reached by rounding alone. */
export const rounding = 1e-9;

const stepDays = 0.25;
/** Steps beyond the horizon grow with the day: bounds may loosen there without costing much. */
const growth = 0.04;

const { ripeness, eatingHarm } = position;

const nextOnGrid = (day: number): number => (Math.floor(day / stepDays) + 1) * stepDays;

/** Follows a lot with the least of every dose, from its ripeness at the least and at the most. */
class Course {
  readonly #lot: RunningLot;
  readonly #stays: readonly StayInRange[];
  readonly #ripens: RipeningTime;
  readonly #air: AirRanges;
  /** Doses at the least; ripeness among them. */
  readonly #least: Float64Array;
  readonly #rates = new Float64Array(stateNames.length);
  readonly #others = new Float64Array(stateNames.length);
  #progress = new Float64Array(endings.length);
  #later = new Float64Array(endings.length);
  #ripest: number;
  #day = 0;
  /** Stays it may be in: from the one it is in at the latest to the one at the earliest. */
  #slow = 0;
  #quick = 0;
  endDay = Number.POSITIVE_INFINITY;
  readonly quality: number[] = [];

  constructor(lot: RunningLot, stays: readonly StayInRange[], air: AirRanges, ripens: RipeningTime) {
    this.#lot = lot;
    this.#stays = stays;
    this.#ripens = ripens;
    this.#air = air;
    this.#least = lot.state.slice();
    this.#ripest = this.#least[ripeness]!;
  }

  run(horizonDays: number): void {
    endingProgress(this.#lot.produce, this.#least, this.#progress);
    this.#stand();
    this.#noteQuality();
    while (this.#day < horizonDays || !Number.isFinite(this.endDay)) {
      if (this.#day > furthestDay) return;
      const beyond = this.#day >= horizonDays;
      this.#stepTo(
        this.#nextStop(beyond ? this.#day + Math.max(stepDays, growth * this.#day) : nextOnGrid(this.#day)),
      );
      if (!beyond && Number.isInteger(this.#day)) this.#noteQuality();
    }
  }

  #noteQuality(): void {
    const low = this.#least[ripeness]!;
    for (let entry = 0; entry < this.#least.length; entry++)
      this.#others[entry] = this.#least[entry]! * (1 - rounding);
    this.#others[ripeness] = Math.min(Math.max(1, low), this.#ripest);
    this.quality.push(quality(this.#lot.produce, this.#others));
  }

  /** Stays and bounds of ripeness as they are from this day on. */
  #stand(): void {
    const { from, to } = this.#ripens;
    if (this.#lot.ripens && this.#day >= from) this.#ripest = Math.max(1, this.#ripest);
    if (this.#lot.ripens && to > 0 && this.#day >= to)
      this.#least[ripeness] = Math.max(1, this.#least[ripeness]!);
    while (this.#leaves(this.#quick, from)) this.#quick++;
    while (this.#leaves(this.#slow, to)) this.#slow++;
  }

  #leaves(stay: number, ripeDay: number): boolean {
    if (stay + 1 >= this.#stays.length) return false;
    const { untilDay, untilRipe } = this.#stays[stay]!.stay;
    return untilDay <= this.#day || (untilRipe && (!this.#lot.ripens || ripeDay <= this.#day));
  }

  /** Steps end where a stay may end. */
  #nextStop(wanted: number): number {
    let stop = wanted;
    const upTo = (day: number): void => {
      if (day > this.#day && day < stop) stop = day;
    };
    upTo(this.#ripens.from);
    upTo(this.#ripens.to);
    for (const day of this.#air.windows) upTo(day);
    for (const { stay } of this.#stays) upTo(stay.untilDay);
    return stop;
  }

  #stepTo(day: number): void {
    const length = day - this.#day;
    const ripestAfter = this.#ripestAfter(length);
    this.#leastRates(Math.max(this.#ripest, ripestAfter));
    const low = this.#least[ripeness]!;
    const harm = this.#least[eatingHarm]!;
    for (let entry = 0; entry < this.#least.length; entry++) {
      this.#least[entry]! += length * this.#rates[entry]!;
    }
    // The rate of ripening jumps at ripe: unripe fruit does not pass it within a step. Nor does harm pass the most there is.
    if (low < 1) this.#least[ripeness] = Math.min(1, this.#least[ripeness]!);
    this.#least[eatingHarm] = Math.min(Math.max(harm, this.#fullHarm()), this.#least[eatingHarm]!);
    this.#ripest = ripestAfter;
    this.#noteEnd(length);
    this.#day = day;
    this.#stand();
  }

  #fullHarm(): number {
    let most = 0;
    for (let stay = this.#slow; stay <= this.#quick; stay++)
      most = Math.max(most, this.#stays[stay]!.leastFullHarm);
    return most;
  }

  #ripestAfter(length: number): number {
    if (!this.#lot.ripens) return this.#ripest;
    let most = 0;
    for (let stay = this.#slow; stay <= this.#quick; stay++) {
      const range = this.#stays[stay]!;
      most = Math.max(most, this.#ripest < 1 ? range.fastestRipening(1) : range.overRipening);
    }
    return Math.min(this.#ripest < 1 ? 1 : 2, this.#ripest + most * length);
  }

  /** Least of the rates in all stays it may be in. */
  #leastRates(ripest: number): void {
    const low = this.#least[ripeness]!;
    const window = windowAt(this.#air, this.#day);
    this.#stays[this.#slow]!.leastRates(this.#least, low, ripest, window, this.#rates);
    for (let stay = this.#slow + 1; stay <= this.#quick; stay++) {
      this.#stays[stay]!.leastRates(this.#least, low, ripest, window, this.#others);
      for (let entry = 0; entry < this.#rates.length; entry++) {
        this.#rates[entry] = Math.min(this.#rates[entry]!, this.#others[entry]!);
      }
    }
  }

  #noteEnd(length: number): void {
    if (Number.isFinite(this.endDay)) return;
    endingProgress(this.#lot.produce, this.#least, this.#later);
    let share = Number.POSITIVE_INFINITY;
    for (let ending = 0; ending < endings.length; ending++) {
      const before = this.#progress[ending]!;
      const after = this.#later[ending]!;
      if (before >= 1) share = 0;
      else if (after >= 1) share = Math.min(share, (1 - before) / (after - before));
    }
    if (share <= 1) this.endDay = this.#day + share * length;
    const last = this.#progress;
    this.#progress = this.#later;
    this.#later = last;
  }
}

/**
 * The best that can become of a lot that becomes ripe between two days, in air known only within bounds.
 *
 * @param lot as it arrives
 * @param horizonDays whole days for which quality is told
 */
export function optimisticCourse(
  lot: RunningLot,
  stays: readonly StayInRange[],
  air: AirRanges,
  ripens: RipeningTime,
  horizonDays: number,
): OptimisticCourse {
  const course = new Course(lot, stays, air, ripens);
  course.run(horizonDays);
  return course;
}
