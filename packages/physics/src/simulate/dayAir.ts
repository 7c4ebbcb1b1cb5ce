import type { AirTree } from "../climate/airTree.js";
import type { CoarseSteps } from "./coarse.js";
import type { Grid } from "./grid.js";
import { sameTime } from "./lotMoves.js";
import type { StepListener } from "./run.js";
import type { StageAir } from "./stageAir.js";
import type { Tape, TapeSide } from "./tape.js";

/** Vapour density [kg/m³] and ethylene [µL/L], by day and box (the room last): means over each day and, as one entry more, at the horizon. */
export interface DayAir {
  readonly days: number;
  /** Boxes and the room: entries a day. */
  readonly width: number;
  readonly density: Float64Array;
  readonly ethylene: Float64Array;
}

/** Takes the day means of a run's air while it runs. */
export class DayAirRecorder implements StepListener, DayAir {
  readonly days: number;
  readonly width: number;
  readonly density: Float64Array;
  readonly ethylene: Float64Array;
  readonly #end: number;

  constructor(tree: AirTree, grid: Grid) {
    this.#end = grid.steps * grid.stepDays;
    this.days = Math.ceil(this.#end - sameTime);
    this.width = tree.size + 1;
    this.density = new Float64Array((this.days + 1) * this.width);
    this.ethylene = new Float64Array((this.days + 1) * this.width);
  }

  /** Forgets everything, for the next run. */
  clear(): void {
    this.density.fill(0);
    this.ethylene.fill(0);
  }

  start(day: number, length: number, air: StageAir): void {
    this.add(day, length, air.density, air.ethylene, 0);
  }

  end(day: number, length: number, air: StageAir): void {
    this.add(day, length, air.density, air.ethylene, 0);
    if (day + length >= this.#end - sameTime) this.keepLast(air.density, air.ethylene, 0);
  }

  /** Adds half a step's worth of the air at one end of it, read from an offset. */
  add(day: number, length: number, density: Float64Array, ethylene: Float64Array, offset: number): void {
    const whole = Math.floor(day + sameTime);
    const weight = (0.5 * length) / Math.min(1, this.#end - whole);
    const to = whole * this.width;
    for (let box = 0; box < this.width; box++) {
      this.density[to + box]! += weight * density[offset + box]!;
      this.ethylene[to + box]! += weight * ethylene[offset + box]!;
    }
  }

  keepLast(density: Float64Array, ethylene: Float64Array, offset: number): void {
    const to = this.days * this.width;
    for (let box = 0; box < this.width; box++) {
      this.density[to + box] = density[offset + box]!;
      this.ethylene[to + box] = ethylene[offset + box]!;
    }
  }
}

/** The same means from the record of a run, by the steps that changed lots are followed in, so that the two can be compared. */
export function dayAirOf(
  tape: Tape,
  { count, first, last, days }: CoarseSteps,
  tree: AirTree,
  grid: Grid,
): DayAir {
  const means = new DayAirRecorder(tree, grid);
  const add = (side: TapeSide, part: number, step: number): void =>
    means.add(days[part]!, days[part + 1]! - days[part]!, side.density, side.ethylene, step * means.width);
  for (let part = 0; part < count; part++) {
    add(tape.start, part, first[part]!);
    add(tape.end, part, last[part]!);
  }
  means.keepLast(tape.end.density, tape.end.ethylene, (tape.intervals - 1) * means.width);
  return means;
}
