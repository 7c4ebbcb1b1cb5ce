import type { AirTree } from "../climate/airTree.js";
import { stateNames } from "../produce/lotState.js";
import type { StepListener } from "./run.js";
import type { RunningLot } from "./runningLot.js";
import type { Background, GivenOffByBox } from "./settleAir.js";
import type { StageAir } from "./stageAir.js";

/** Numbers kept of each lot at each end of a step: conductance and supply as the box sees them, emission, surface conductance. */
export const perLot = 4;
const stateSize = stateNames.length;

/** The air and the lots at one end of every step, flat by step. */
export interface TapeSide extends GivenOffByBox {
  /** By step and box, the room last. */
  readonly density: Float64Array;
  readonly ethylene: Float64Array;
  /** By step, lot and number (see `perLot`). */
  readonly lots: Float64Array;
}

/** A whole run on record, step by step: enough to take lots out of the air and to see what others would do in changed air. */
export interface Tape extends Background {
  readonly start: TapeSide;
  readonly end: TapeSide;
  /** By step and lot: which of its stays it is in. */
  readonly stays: Uint8Array;
  /** By step, lot and state: the states at the start of each step. */
  readonly states: Float64Array;
}

/** Arrays of a tape with room for a number of steps, holding what `old` held. */
function withRoom(steps: number, boxes: number, lots: number, old?: Arrays): Arrays {
  const side = (from?: TapeSide): TapeSide => ({
    conductance: grown(steps * boxes, from?.conductance),
    supply: grown(steps * boxes, from?.supply),
    emission: grown(steps * boxes, from?.emission),
    density: grown(steps * (boxes + 1), from?.density),
    ethylene: grown(steps * (boxes + 1), from?.ethylene),
    lots: grown(steps * lots * perLot, from?.lots),
  });
  const moved = new Uint8Array(steps);
  const stays = new Uint8Array(steps * lots);
  if (old) {
    moved.set(old.moved);
    stays.set(old.stays);
  }
  return {
    days: grown(steps + 1, old?.days),
    moved,
    start: side(old?.start),
    end: side(old?.end),
    stays,
    states: grown(steps * lots * stateSize, old?.states),
  };
}

type Arrays = Omit<Tape, "intervals">;

function grown(length: number, old?: Float64Array): Float64Array {
  const array = new Float64Array(length);
  if (old) array.set(old);
  return array;
}

/** Records a run. Makes room for the steps expected, and for more when moves cut it into more. */
export class TapeRecorder implements StepListener {
  readonly #boxes: number;
  readonly #lots: number;
  #arrays: Arrays;
  #room: number;
  #steps = 0;

  constructor(tree: AirTree, lots: readonly RunningLot[], expectedSteps: number) {
    this.#boxes = tree.size;
    this.#lots = lots.length;
    this.#room = expectedSteps;
    this.#arrays = withRoom(expectedSteps, this.#boxes, this.#lots);
  }

  start(day: number, _length: number, air: StageAir, lots: readonly RunningLot[], moved: boolean): void {
    if (this.#steps === this.#room) {
      this.#room = 2 * this.#room + 1;
      this.#arrays = withRoom(this.#room, this.#boxes, this.#lots, this.#arrays);
    }
    const step = this.#steps;
    const { days, moved: anew, start: side, stays, states } = this.#arrays;
    days[step] = day;
    anew[step] = moved ? 1 : 0;
    this.#keep(side, step, air, lots);
    for (let lot = 0; lot < lots.length; lot++) {
      const entry = step * this.#lots + lot;
      stays[entry] = lots[lot]!.stay;
      const { state } = lots[lot]!;
      // By hand: for ten numbers the built-in copy takes longer to begin than to do.
      for (let index = 0; index < stateSize; index++) states[entry * stateSize + index] = state[index]!;
    }
  }

  end(day: number, length: number, air: StageAir, lots: readonly RunningLot[]): void {
    this.#keep(this.#arrays.end, this.#steps, air, lots);
    this.#steps++;
    this.#arrays.days[this.#steps] = day + length;
  }

  #keep(side: TapeSide, step: number, air: StageAir, lots: readonly RunningLot[]): void {
    side.conductance.set(air.conductance, step * this.#boxes);
    side.supply.set(air.supply, step * this.#boxes);
    side.emission.set(air.emission, step * this.#boxes);
    side.density.set(air.density, step * (this.#boxes + 1));
    side.ethylene.set(air.ethylene, step * (this.#boxes + 1));
    for (let lot = 0; lot < lots.length; lot++) {
      const { given } = lots[lot]!;
      const entry = (step * this.#lots + lot) * perLot;
      side.lots[entry] = given.conductance;
      side.lots[entry + 1] = given.supply;
      side.lots[entry + 2] = given.emission;
      side.lots[entry + 3] = given.surface;
    }
  }

  tape(): Tape {
    return { intervals: this.#steps, ...this.#arrays };
  }
}

/** The air at the end of a tape, with what everything gives off there. What condenses is not on record. */
export function lastAir({ end, intervals }: Tape, tree: AirTree): StageAir {
  const last = intervals - 1;
  const of = (values: Float64Array, width: number): Float64Array =>
    values.slice(last * width, (last + 1) * width);
  return {
    density: of(end.density, tree.size + 1),
    ethylene: of(end.ethylene, tree.size + 1),
    conductance: of(end.conductance, tree.size),
    supply: of(end.supply, tree.size),
    emission: of(end.emission, tree.size),
    condensing: new Float64Array(tree.size),
  };
}
