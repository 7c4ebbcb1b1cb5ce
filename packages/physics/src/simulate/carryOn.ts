import type { AirTree } from "../climate/airTree.js";
import { ethyleneEmission } from "../produce/emission.js";
import { at as position } from "../produce/lotState.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, blankConditions } from "./airAround.js";
import { EndFinder } from "./endFinder.js";
import { giveOff } from "./giveOff.js";
import { makeMoves } from "./lotMoves.js";
import { justUnripe } from "./lotStep.js";
import type { RunningLot } from "./runningLot.js";
import { AirSettler, type Background } from "./settleAir.js";
import { type StageAir, stageAir } from "./stageAir.js";

/**
 * Steps of ripeness in which fruit is carried on. An eighth, so that the ripeness from which a fruit begins to bear colder air (0.75) and
 * ripe (1) are each the end of a step: rates bend or jump there.
 */
const ripenessSteps = 8;
/** A ripeness this near the end of a step counts as there [steps]. */
const sameRipeness = 1e-9;

/** Ripeness of a lot at the end of its next step; undefined where it does not ripen further. */
function nextRipeness({ ripens, state, rates }: RunningLot): number | undefined {
  const ripeness = state[position.ripeness]!;
  if (!ripens || !(rates[position.ripeness]! > 0) || ripeness >= 2) return undefined;
  return ripeness >= 1 ? 2 : (Math.floor(ripeness * ripenessSteps + sameRipeness) + 1) / ripenessSteps;
}

function ethyleneResistance({ size, neighbour, litresPerHour }: AirTree): Float64Array {
  const out = new Float64Array(size + 1);
  for (let box = 0; box < size; box++) out[box] = out[neighbour[box]!]! + 1 / litresPerHour[box]!;
  return out;
}

/** state += days · mean of the rates at both ends */
function advance({ state, rates, laterRates }: RunningLot, days: number): void {
  for (let entry = 0; entry < state.length; entry++) {
    state[entry]! += 0.5 * days * (rates[entry]! + laterRates[entry]!);
  }
}

/** What all lots but one give off, from the sums in the air. What rounding leaves below nothing is nothing. */
function othersIn(air: StageAir, { given, ethyleneWithheld }: RunningLot, box: number): Background {
  const side = {
    conductance: air.conductance.slice(),
    supply: air.supply.slice(),
    emission: air.emission.slice(),
  };
  if (box < side.emission.length) {
    side.conductance[box] = Math.max(0, side.conductance[box]! - given.conductance);
    side.supply[box] = Math.max(0, side.supply[box]! - given.supply);
    if (!ethyleneWithheld) side.emission[box] = Math.max(0, side.emission[box]! - given.emission);
  }
  return { intervals: 1, days: Float64Array.of(0, 1), moved: Uint8Array.of(1), start: side, end: side };
}

/**
 * Carries lots on beyond the horizon to their ends, each by itself: what all others give off stays as it was at the horizon, and so does
 * the air but for what the lot itself changes, by ripening or by moving.
 *
 * Where a lot does not ripen its rates are constant, and its end is found along a straight line. Fruit is integrated in steps of ripeness (trapezoid:
 * second order; exact when over-ripening, where decay is a straight line in time), however long those take. So the cost of it does not grow
 * with the time to the end. One for a run; nothing carries over from one lot to the next.
 */
export class CarryOn {
  readonly #tree: AirTree;
  /** By box and, last, the room: how much ethylene 1 µL/h given off there adds [h/L]. */
  readonly #resistance: Float64Array;
  readonly #conditions = blankConditions();
  readonly #ends = new EndFinder();
  /** The frozen air, and what of the lot's own emission is in it already [µL/h]. */
  #air: StageAir;
  #emission = 0;
  /** For air that the lot changes by moving. */
  #settler: AirSettler | undefined;
  readonly #settled: StageAir;

  constructor(tree: AirTree) {
    this.#tree = tree;
    this.#resistance = ethyleneResistance(tree);
    this.#settled = stageAir(tree);
    this.#air = this.#settled;
  }

  /**
   * Finds the end of a lot that has none yet, from its state on the day of the horizon, into its record; and the ripe day and the moves that
   * come before it. `air` is that at the horizon, with `emission` [µL/h] of the lot's own in it. The lot's state and stay are left as they were.
   */
  run(lot: RunningLot, air: StageAir, horizon: number, emission = lot.given.emission): void {
    const { stay } = lot;
    lot.foreseen.set(lot.state);
    this.#air = air;
    this.#emission = emission;
    let day = horizon;
    while (Number.isNaN(lot.record.endDay)) day += this.#leap(lot, day);
    lot.record.beyondHorizon = true;
    lot.state.set(lot.foreseen);
    lot.stay = stay;
  }

  /** Integrates to the next step of ripeness or move, or notes the end. Returns the days it took. */
  #leap(lot: RunningLot, day: number): number {
    const { box } = lot.stays[lot.stay]!;
    if (makeMoves(lot, day)) this.#settleMoved(lot, box);
    this.#rates(lot, lot.state, lot.rates);
    const untilMove =
      lot.stay + 1 < lot.stays.length ? lot.stays[lot.stay]!.untilDay - day : Number.POSITIVE_INFINITY;
    const target = nextRipeness(lot);
    const ripens = target === undefined ? Number.POSITIVE_INFINITY : this.#daysTo(target, lot);
    const length = Math.min(ripens, untilMove);
    if (target === undefined) lot.laterRates.set(lot.rates);
    else if (untilMove < ripens) this.#ratesAfter(lot, untilMove);
    const { state, rates, laterRates } = lot;
    const end = this.#ends.find({ produce: lot.produce, state, rates, laterRates }, length);
    if (end) {
      lot.record.endDay = day + end.after;
      lot.record.endedBy = end.endedBy;
      return 0;
    }
    advance(lot, length);
    if (target !== undefined && ripens <= untilMove) lot.state[position.ripeness] = target;
    if (target === 1 && ripens <= untilMove) lot.record.ripeDay = day + length;
    return length;
  }

  /** Days until a lot has a ripeness, by the mean of its rates now and there; leaves the latter in `laterRates`. */
  #daysTo(target: number, lot: RunningLot): number {
    const missing = target - lot.state[position.ripeness]!;
    const speed = lot.rates[position.ripeness]!;
    this.#ratesAfter(lot, missing / speed);
    return (2 * missing) / (speed + lot.laterRates[position.ripeness]!);
  }

  /** The rates where a lot would be after some days at its rates now, into `laterRates`; those of unripe fruit up to ripe itself. */
  #ratesAfter(lot: RunningLot, days: number): void {
    const { state, middle, rates } = lot;
    for (let entry = 0; entry < state.length; entry++) middle[entry] = state[entry]! + days * rates[entry]!;
    if (state[position.ripeness]! < 1) {
      middle[position.ripeness] = Math.min(justUnripe, middle[position.ripeness]!);
    }
    this.#rates(lot, middle, lot.laterRates);
  }

  #rates(lot: RunningLot, state: Float64Array, out: Float64Array): void {
    const stay = lot.stays[lot.stay]!;
    const emission = lot.ripens ? ethyleneEmission(stay.at, state) * lot.kilograms : this.#emission;
    const adds = lot.ethyleneWithheld ? 0 : (emission - this.#emission) * this.#resistance[stay.box]!;
    const { density, ethylene } = this.#air;
    const around = Math.max(0, ethylene[stay.box]! + adds);
    airAround(stay, lot.given.surface, emission, density[stay.box]!, around, this.#conditions);
    stateRates(stay.at, state, this.#conditions, out);
  }

  /** Settles the air anew with the lot in its next stay and all others as they were. */
  #settleMoved(lot: RunningLot, from: number): void {
    const others = othersIn(this.#air, lot, from);
    giveOff(lot, lot.state);
    this.#settler ??= new AirSettler(this.#tree);
    this.#settler.reset();
    this.#settler.settle([lot], this.#settled, others, 0, 0);
    this.#air = this.#settled;
    this.#emission = lot.given.emission;
  }
}
