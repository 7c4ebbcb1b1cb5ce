import { carriedState, initialState } from "../produce/initialState.js";
import { endings, at as position, stateNames } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";
import type { CompiledStay } from "./compiledStay.js";
import { type LotRecord, lotRecord } from "./lotRecord.js";
import type { SimulatedLot } from "./simulation.js";

/** What a lot gives off at a stage. */
export interface GivenOff {
  /** Surface conductance to vapour [m³/s] and ethylene emission [µL/h] of the lot itself. */
  surface: number;
  emission: number;
  /** The wrap's air is held at saturation, by its own water or by condensation. */
  saturated: boolean;
  /** As the box's air sees it: gives off supply − conductance · density [kg/s]. */
  conductance: number;
  supply: number;
}

const nothing = (): GivenOff => ({
  surface: 0,
  emission: 0,
  saturated: false,
  conductance: 0,
  supply: 0,
});

/** A lot while it is being integrated. */
export interface RunningLot {
  readonly lot: SimulatedLot;
  /** Its kind at its pace, and its mass: read at every step, so kept at hand. */
  readonly produce: Produce;
  readonly kilograms: number;
  readonly stays: readonly CompiledStay[];
  readonly ripens: boolean;
  /** What of it does not reach the air of its boxes. */
  readonly ethyleneWithheld: boolean;
  readonly vapourWithheld: boolean;
  readonly record: LotRecord;
  stay: number;
  readonly state: Float64Array;
  /** State foreseen for the end of the step, and at a break within it. */
  readonly foreseen: Float64Array;
  readonly middle: Float64Array;
  /** d(state)/dt at the start of the step (when `ratesHold`), and two more of a step. */
  rates: Float64Array;
  readonly laterRates: Float64Array;
  endRates: Float64Array;
  ratesHold: boolean;
  /** Share of the step at which the lot becomes ripe; 1 when it does not. */
  ripensAt: number;
  readonly given: GivenOff;
  /** The stay whose emission is in `given`; −1 at first. */
  emissionOf: number;
}

/** Room for the states and rates of a lot while it runs. */
export type LotRoom = readonly Float64Array[];

const size = stateNames.length;
const arrays = 6;

/** Rooms for so many lots, in one piece of memory: making the arrays apart takes longer. */
export function lotRooms(count: number): LotRoom[] {
  const memory = new Float64Array(count * arrays * size).buffer;
  return Array.from({ length: count }, (_, lot) =>
    Array.from({ length: arrays }, (_, array) => {
      const from = (lot * arrays + array) * size;
      return new Float64Array(memory, from * Float64Array.BYTES_PER_ELEMENT, size);
    }),
  );
}

export const lotRoom = (): LotRoom => lotRooms(1)[0]!;

/**
 * @param room to be used again once nobody needs the last lot that had it; made anew unless given
 * @param produce the lot's kind at its pace
 */
export function runningLot(
  lot: SimulatedLot,
  stays: readonly CompiledStay[],
  room: LotRoom = lotRoom(),
  produce: Produce = lot.produce,
): RunningLot {
  if (stays.length === 0) throw new RangeError(`“${produce.id}” is nowhere. Give it at least one stay.`);
  const [state, foreseen, middle, rates, laterRates, endRates] = room as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  if (lot.state) state.set(carriedState(produce, lot.state));
  else initialState(produce, lot.form, lot.ripeness, lot.spent, lot.believedSpent, state);
  return {
    lot,
    produce,
    kilograms: lot.kilograms,
    stays,
    ripens: produce.ripening !== undefined,
    ethyleneWithheld: lot.withheld?.ethylene ?? false,
    vapourWithheld: lot.withheld?.vapour ?? false,
    record: lotRecord(stays.length, endings.length),
    stay: 0,
    state,
    foreseen,
    middle,
    rates,
    laterRates,
    endRates,
    ratesHold: false,
    ripensAt: 1,
    given: nothing(),
    emissionOf: -1,
  };
}

/** The same lot from its start once more. */
export const runAgain = ({ lot, stays, produce }: RunningLot, room: LotRoom): RunningLot =>
  runningLot(lot, stays, room, produce);

/** Ripeness this near 1 counts as ripe: a move when ripe is located to within a ten-thousandth of the way. */
const nearlyRipe = 1 - 1e-4;

/** Ready to eat. Kinds that do not ripen always are. */
export const isRipe = (lot: RunningLot): boolean =>
  !lot.ripens || lot.state[position.ripeness]! >= nearlyRipe;
