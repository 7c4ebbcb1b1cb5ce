import { endingProgress } from "../produce/ending.js";
import { endings, at as position, stateNames } from "../produce/lotState.js";
import { quality } from "../produce/quality.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, blankConditions, type MutableConditions } from "./airAround.js";
import type { AirChanges } from "./airChanges.js";
import { BeyondHorizon, type End } from "./beyondHorizon.js";
import type { DayAir } from "./dayAir.js";
import type { Estimate, WantedQuality } from "./estimated.js";
import { firstReached, shareReached } from "./lotRecord.js";
import type { LotOutcome } from "./simulation.js";
import type { StageAir } from "./stageAir.js";
import { lastAir, perLot } from "./tape.js";
import type { Trajectory } from "./trajectory.js";

const size = stateNames.length;

/** What became of a lot within the horizon. */
interface Passage {
  end?: End;
  touched: boolean;
  unripeShift: number;
}

/** Shift of ripeness from which a lot is followed again: what it gives off then changes by about 5 %. */
const ripenessThatMatters = 0.015;
/** The same for fruit that is moved when ripe: what it would do a little longer in the one place it would do that much shorter in the other. */
const ripenessThatMoves = 0.003;
/** Growth of what fruit gives off with ripeness, in the logarithm: thirtyfold from unripe to ripe, a usual factor. */
const emissionByRipeness = 3.4;
/** Share of the life on record from which an end is looked for. One that comes even earlier is found there: such a lot is followed again. */
const lookedThrough = 0.5;

/**
 * What changed air does to lots that stay as they are: for the middle of each day the rates are worked out anew in its mean changed air,
 * the differences from those on record are added up to a shift of the states, and the end is looked for along the shifted states.
 */
export class Estimator {
  readonly #base: Trajectory;
  /** Of each lot, whether it moves within a day: then a sample stands for part of a day somewhere else. */
  readonly #movesWithinDay: readonly boolean[];
  /** Of each lot, boxes it is in between two samples only. */
  readonly #unseen: readonly (readonly number[])[];
  readonly #conditions: MutableConditions = blankConditions();
  readonly #difference = new Float64Array(size);
  readonly #shift = new Float64Array(size);
  /** The shift at the start of each day and at the horizon, as last kept. */
  readonly #shifts: Float64Array;
  readonly #state = new Float64Array(size);
  #progress = new Float64Array(endings.length);
  #nextProgress = new Float64Array(endings.length);
  /** The stay that `#difference` still holds for, until the air turns: only where nothing else changes the rates. −1: none. */
  #heldStay = -1;
  readonly #beyond: BeyondHorizon;
  /** Where each lot is found to end when nothing changes, once it has been asked for. */
  readonly #unchanged: (End | undefined)[] = [];

  constructor(base: Trajectory) {
    this.#base = base;
    const { grid } = base.inner;
    this.#beyond = new BeyondHorizon(base);
    this.#shifts = new Float64Array((base.inner.samples.length + 1) * size);
    this.#movesWithinDay = base.lots.map(({ stayStarts }) =>
      stayStarts.some((day) => day < grid.steps * grid.stepDays && !Number.isInteger(day)),
    );
    this.#unseen = base.lots.map((_, lot) => this.#boxesUnseen(lot));
  }

  /** Boxes of the stays of a lot that fall between two samples. */
  #boxesUnseen(lot: number): number[] {
    const { samples, running, tape } = this.#base.inner;
    const seen = new Set(samples.map((step) => tape.stays[step * running.length + lot]!));
    const last = tape.stays[(tape.intervals - 1) * running.length + lot]!;
    const { stays } = running[lot]!;
    return stays.flatMap(({ box }, stay) => (stay < last && !seen.has(stay) ? [box] : []));
  }

  /** The estimate for one lot, or undefined where its air is as it was. */
  of(
    lot: number,
    air: DayAir,
    horizonAir: StageAir,
    changes: AirChanges,
    wanted: WantedQuality,
  ): Estimate | undefined {
    const { samples, running } = this.#base.inner;
    const base = this.#base.lots[lot]!;
    if (!this.#touches(lot, changes)) return undefined;
    const { ripens } = running[lot]!;
    const looks = base.endDay <= samples.length;
    let { end, touched, unripeShift } = this.#through(lot, air, changes, looks, wanted.daily);
    if (!end && this.#touchedBeyond(lot, changes)) touched = true;
    const missed = this.#misses(lot, changes);
    if (!touched && !missed) return undefined;
    const most = this.#movesWithinDay[lot] ? ripenessThatMoves : ripenessThatMatters;
    const doubtful = missed || (ripens && Math.abs(unripeShift) > most);
    const airShift = ripens && doubtful ? this.#airShift(lot, Math.abs(unripeShift)) : 0;
    if (doubtful) return { doubtful, airShift };
    end ??= this.#endBeyond(lot, horizonAir);
    if (!looks && end.day === samples.length) end = this.#through(lot, air, changes, true, false).end ?? end;
    return this.#estimate(lot, end, unripeShift, wanted);
  }

  /** Goes through the days of the horizon, adding up the shift; and looks for an end in them where that may be. `keeps`: the shift at each day, to the last. */
  #through(lot: number, air: DayAir, changes: AirChanges, looks: boolean, keeps: boolean): Passage {
    const { samples } = this.#base.inner;
    const base = this.#base.lots[lot]!;
    this.#shift.fill(0);
    this.#heldStay = -1;
    const lookFrom = looks
      ? Math.floor(lookedThrough * Math.min(base.endDay, samples.length))
      : samples.length;
    const passage: Passage = { touched: false, unripeShift: 0 };
    for (let day = 0; day <= samples.length; day++) {
      if (keeps)
        for (let index = 0; index < size; index++) this.#shifts[day * size + index] = this.#shift[index]!;
      if (day === samples.length || (passage.end && !keeps)) break;
      if (day === lookFrom) this.#progressOn(lot, day, this.#progress);
      if (this.#addDay(lot, day, air, changes)) passage.touched = true;
      if (day < base.ripeDay) passage.unripeShift = this.#shift[position.ripeness]!;
      if (day >= lookFrom && !passage.end) {
        const end = this.#endWithin(lot, day);
        if (end) passage.end = end;
      }
    }
    return passage;
  }

  /** Where a lot on record would be found to end in this way, without any change: what estimates are compared with. Forgets the shift at hand. */
  #endUnchanged(lot: number): End {
    const known = this.#unchanged[lot];
    if (known) return known;
    const end = this.#foundUnchanged(lot);
    this.#unchanged[lot] = end;
    return end;
  }

  #foundUnchanged(lot: number): End {
    this.#shift.fill(0);
    this.#progressOn(lot, 0, this.#progress);
    for (let day = 0; day < this.#base.inner.samples.length; day++) {
      const end = this.#endWithin(lot, day);
      if (end) return end;
    }
    return this.#endBeyond(lot, lastAir(this.#base.inner.tape, this.#base.inner.tree));
  }

  /** Whether the air changes where the lot is, while it matters to it. */
  #touches(lot: number, changes: AirChanges): boolean {
    const { tape, running, samples, tree } = this.#base.inner;
    const { stays } = running[lot]!;
    const { endDay } = this.#base.lots[lot]!;
    for (let day = 0; day < samples.length && day < endDay; day++) {
      const { box } = stays[tape.stays[samples[day]! * running.length + lot]!]!;
      if (changes.onDay[day * (tree.size + 1) + box] === 1) return true;
    }
    if (endDay > samples.length && this.#touchedBeyond(lot, changes)) return true;
    return this.#misses(lot, changes);
  }

  /** Whether air changes where no sample sees the lot. */
  #misses(lot: number, changes: AirChanges): boolean {
    return this.#unseen[lot]!.some((box) => changes.ever[box] === 1);
  }

  /** Whether the air at the horizon changes where the lot is then or may be moved to later. */
  #touchedBeyond(lot: number, changes: AirChanges): boolean {
    const { tape, running, samples, tree } = this.#base.inner;
    const { stays } = running[lot]!;
    const first = tape.stays[(tape.intervals - 1) * running.length + lot]!;
    for (let stay = first; stay < stays.length; stay++) {
      if (changes.onDay[samples.length * (tree.size + 1) + stays[stay]!.box] === 1) return true;
    }
    return false;
  }

  /** Adds what the changed air does in a day. Says whether it does anything. */
  #addDay(lot: number, day: number, air: DayAir, changes: AirChanges): boolean {
    if (!this.#differenceAt(lot, day, air, changes)) return false;
    for (let index = 0; index < size; index++) this.#shift[index]! += this.#difference[index]!;
    return true;
  }

  /** Sets the difference that the changed air makes to the rates at a sample. False where it makes none. */
  #differenceAt(lot: number, sample: number, air: DayAir, changes: AirChanges): boolean {
    const { tape, running, samples, sampleRates } = this.#base.inner;
    const entry = samples[sample]! * running.length + lot;
    const stay = running[lot]!.stays[tape.stays[entry]!]!;
    const where = sample * air.width + stay.box;
    if (changes.onDay[where] === 0 && this.#shift[position.ripeness] === 0) return false;
    if (this.#heldStay === tape.stays[entry] && changes.turned[where] === 0) return true;
    this.#heldStay = running[lot]!.ripens ? -1 : tape.stays[entry]!;
    const given = tape.start.lots;
    const [emission, surface] = [given[entry * perLot + 2]!, given[entry * perLot + 3]!];
    airAround(stay, surface, emission, air.density[where]!, air.ethylene[where]!, this.#conditions);
    for (let index = 0; index < size; index++) {
      this.#state[index] = tape.states[entry * size + index]! + this.#shift[index]!;
    }
    stateRates(stay.at, this.#state, this.#conditions, this.#difference);
    const before = (sample * running.length + lot) * size;
    for (let index = 0; index < size; index++) this.#difference[index]! -= sampleRates[before + index]!;
    return true;
  }

  /** The state on record at the start of a day (or at the horizon), shifted. */
  #stateOn(lot: number, day: number): Float64Array {
    const { tape, running, dayStarts } = this.#base.inner;
    const step = dayStarts[day];
    const from = step === undefined ? running[lot]!.state : tape.states;
    const offset = step === undefined ? 0 : (step * running.length + lot) * size;
    for (let index = 0; index < size; index++)
      this.#state[index] = from[offset + index]! + this.#shift[index]!;
    return this.#state;
  }

  #progressOn(lot: number, day: number, out: Float64Array): void {
    endingProgress(this.#base.inner.running[lot]!.produce, this.#stateOn(lot, day), out);
  }

  /** The end, when it lies between the start of a day and the next. */
  #endWithin(lot: number, day: number): End | undefined {
    this.#progressOn(lot, day + 1, this.#nextProgress);
    const ending = firstReached(this.#progress, this.#nextProgress);
    if (ending >= 0) {
      const share = shareReached(this.#progress[ending]!, this.#nextProgress[ending]!);
      const { ripeDay } = this.#base.lots[lot]!;
      return { day: day + share, endedBy: endings[ending]!, ripeDay };
    }
    const last = this.#progress;
    this.#progress = this.#nextProgress;
    this.#nextProgress = last;
    return undefined;
  }

  /** The end of a lot that has none within the horizon, from its shifted state there, in the air there. */
  #endBeyond(lot: number, air: StageAir): End {
    return this.#beyond.end(lot, this.#stateOn(lot, this.#base.inner.samples.length), air);
  }

  #airShift(lot: number, ripenessShift: number): number {
    const { tape, running, samples, tree } = this.#base.inner;
    const share = Math.min(1, emissionByRipeness * ripenessShift);
    let most = 0;
    for (const step of samples) {
      const entry = step * running.length + lot;
      const { box } = running[lot]!.stays[tape.stays[entry]!]!;
      if (box === tree.size) continue;
      const adds = tape.start.lots[entry * perLot + 2]! / tree.litresPerHour[box]!;
      most = Math.max(most, (share * adds) / tape.start.ethylene[step * (tree.size + 1) + box]!);
    }
    return most;
  }

  /** Quality at each day, by the shifts kept. Forgets the shift at hand. */
  #qualities(lot: number): number[] {
    const { running, samples } = this.#base.inner;
    const qualities: number[] = [];
    for (let day = 0; day <= samples.length; day++) {
      for (let index = 0; index < size; index++) this.#shift[index] = this.#shifts[day * size + index]!;
      qualities.push(quality(running[lot]!.produce, this.#stateOn(lot, day)));
    }
    return qualities;
  }

  #estimate(lot: number, end: End, unripeShift: number, wanted: WantedQuality): Estimate {
    const { running, grid } = this.#base.inner;
    const { lot: simulated } = running[lot]!;
    const base = this.#base.lots[lot]!;
    const horizon = grid.steps * grid.stepDays;
    const later = end.day - this.#endUnchanged(lot).day;
    const endDay = Number.isNaN(later) ? base.endDay : Math.max(0, base.endDay + later);
    const life = Math.max(1, Math.min(base.endDay, endDay));
    const daysOff = this.#movesWithinDay[lot] ? 2 : 1;
    const error = Number.isNaN(later) ? 0 : (daysOff * Math.abs(later)) / (life * life);
    const moved = !(Math.abs(endDay - base.endDay) < wanted.sameLife * base.endDay);
    const outcome: LotOutcome = {
      endDay,
      endedBy: end.endedBy,
      beyondHorizon: endDay > horizon,
      ripeDay:
        base.ripeDay > horizon ? end.ripeDay : shiftedRipeDay(base.ripeDay, simulated.ripeness, unripeShift),
      stayStarts: end.stayStarts ?? base.stayStarts,
      quality: wanted.daily && moved && error <= wanted.tolerance ? this.#qualities(lot) : [],
      daily: [],
    };
    return { outcome, error, doubtful: false, airShift: 0 };
  }
}

/** Ripening by a mean rate that is faster by as much as ripeness is shifted. */
function shiftedRipeDay(ripeDay: number, arrived: number, shift: number): number {
  if (ripeDay === 0 || ripeDay === Number.POSITIVE_INFINITY) return ripeDay;
  return (ripeDay * (1 - arrived)) / (1 - arrived + shift);
}
