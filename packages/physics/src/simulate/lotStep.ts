import { at as position } from "../produce/lotState.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, type MutableConditions } from "./airAround.js";
import { daysUntilRipe, ratesIn, sameTime } from "./lotMoves.js";
import { noteProgress } from "./lotRecord.js";
import type { RunningLot } from "./runningLot.js";
import type { BoxAir } from "./stageAir.js";

/** The air at the start and the end of a step; in between it changes along a straight line. */
export interface StepAir {
  readonly start: BoxAir;
  readonly end: BoxAir;
}

/** Ripeness at which the rates still are those of unripe fruit: they jump at 1. */
export const justUnripe = 1 - 1e-9;

/** out = from + length · rates */
function along(from: Float64Array, rates: Float64Array, length: number, out: Float64Array): void {
  for (let entry = 0; entry < out.length; entry++) out[entry] = from[entry]! + length * rates[entry]!;
}

/** state += length · mean of two rates */
function advance(state: Float64Array, first: Float64Array, second: Float64Array, length: number): void {
  const half = 0.5 * length;
  for (let entry = 0; entry < state.length; entry++) state[entry]! += half * (first[entry]! + second[entry]!);
}

/** Rates at a share of the step, in the air between its start and its end. */
function ratesBetween(
  lot: RunningLot,
  state: Float64Array,
  air: StepAir,
  share: number,
  conditions: MutableConditions,
  out: Float64Array,
): void {
  const stay = lot.stays[lot.stay]!;
  const { surface, emission } = lot.given;
  const density = (1 - share) * air.start.density[stay.box]! + share * air.end.density[stay.box]!;
  const ethylene = (1 - share) * air.start.ethylene[stay.box]! + share * air.end.ethylene[stay.box]!;
  airAround(stay, surface, emission, density, ethylene, conditions);
  stateRates(stay.at, state, conditions, out);
}

/** First half of a step (predictor): the state at its end by the rates at its start, so that the air at its end can be settled. */
export function foresee(lot: RunningLot, length: number, start: BoxAir, conditions: MutableConditions): void {
  if (!lot.ratesHold) ratesIn(lot, lot.state, start, conditions, lot.rates);
  const ripens = lot.ripens ? daysUntilRipe(lot, start, conditions) / length : Number.POSITIVE_INFINITY;
  lot.ripensAt = ripens < 1 - sameTime ? ripens : 1;
  if (lot.ripensAt === 1) {
    along(lot.state, lot.rates, length, lot.foreseen);
    // A lot that ripens just as the step ends keeps the rates of unripe fruit throughout it.
    if (lot.ripens && lot.state[position.ripeness]! < 1 && lot.foreseen[position.ripeness]! > justUnripe) {
      lot.foreseen[position.ripeness] = justUnripe;
    }
    return;
  }
  along(lot.state, lot.rates, ripens * length, lot.middle);
  lot.middle[position.ripeness] = 1;
  ratesIn(lot, lot.middle, start, conditions, lot.laterRates);
  along(lot.middle, lot.laterRates, (1 - ripens) * length, lot.foreseen);
}

/** Second half of a step (corrector): Heun's mean of the rates at its start and end, or in two parts where the lot ripens within it. */
export function step(
  lot: RunningLot,
  day: number,
  length: number,
  air: StepAir,
  conditions: MutableConditions,
): void {
  const from = lot.ripensAt < 1 ? stepUntilRipe(lot, day, length, air, conditions) : day;
  const rest = day + length - from;
  const target = lot.ripensAt < 1 ? lot.middle : lot.foreseen;
  if (lot.ripensAt < 1) along(lot.state, lot.rates, rest, target);
  ratesIn(lot, target, air.end, conditions, lot.endRates);
  const ripeness = lot.state[position.ripeness]!;
  advance(lot.state, lot.rates, lot.endRates, rest);
  closeStep(lot, from, day + length, ripeness);
}

/**
 * Integrates to the moment a lot becomes ripe, where its rates jump. The moment foreseen is corrected by the rate found there, and
 * ripeness set to the 1 that it is by definition. Leaves the rates just after in `rates`; returns the moment [d].
 */
function stepUntilRipe(
  lot: RunningLot,
  day: number,
  length: number,
  air: StepAir,
  conditions: MutableConditions,
): number {
  lot.middle[position.ripeness] = justUnripe;
  ratesBetween(lot, lot.middle, air, lot.ripensAt, conditions, lot.laterRates);
  const missing = 1 - lot.state[position.ripeness]!;
  const rate = 0.5 * (lot.rates[position.ripeness]! + lot.laterRates[position.ripeness]!);
  const until = Math.min(1, missing / (rate * length));
  advance(lot.state, lot.rates, lot.laterRates, until * length);
  lot.state[position.ripeness] = 1;
  const moment = day + until * length;
  noteProgress(lot.record, lot.produce, day, moment, lot.state, lot.rates, lot.laterRates);
  lot.record.ripeDay = moment;
  ratesBetween(lot, lot.state, air, until, conditions, lot.rates);
  return moment;
}

/** Keeps the rates for the next step and notes ripeness or an end reached. */
function closeStep(lot: RunningLot, from: number, to: number, ripenessBefore: number): void {
  const { record } = lot;
  noteProgress(record, lot.produce, from, to, lot.state, lot.rates, lot.endRates);
  const ripeness = lot.state[position.ripeness]!;
  if (lot.ripens && ripeness >= 1 && ripenessBefore < 1) {
    record.ripeDay = from + ((1 - ripenessBefore) / (ripeness - ripenessBefore)) * (to - from);
  }
  const last = lot.rates;
  lot.rates = lot.endRates;
  lot.endRates = last;
  lot.ratesHold = true;
}
