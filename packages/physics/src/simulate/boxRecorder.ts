import type { AirTree } from "../climate/airTree.js";
import type { Grid } from "./grid.js";
import { sameTime } from "./lotMoves.js";
import type { StepListener } from "./run.js";
import type { GivenOff, RunningLot } from "./runningLot.js";
import type { BoxOutcome } from "./simulation.js";
import type { StageAir } from "./stageAir.js";

const secondsPerDay = 86_400;

/** Keeps what the air of each box did: humidity and ethylene at whole days, water condensed over all. */
export class BoxRecorder implements StepListener {
  readonly #tree: AirTree;
  readonly #grid: Grid;
  readonly #humidity: number[][];
  readonly #ethylene: number[][];
  readonly #condensed: Float64Array;
  /** Whole days noted so far. */
  #wholeDays = 0;

  constructor(tree: AirTree, grid: Grid) {
    this.#tree = tree;
    this.#grid = grid;
    this.#humidity = Array.from({ length: tree.size }, () => []);
    this.#ethylene = Array.from({ length: tree.size }, () => []);
    this.#condensed = new Float64Array(tree.size);
  }

  start(day: number, length: number, air: StageAir, lots: readonly RunningLot[]): void {
    if (day >= this.#wholeDays - sameTime) this.#note(air);
    this.#condense(length, air, lots);
  }

  end(day: number, length: number, air: StageAir, lots: readonly RunningLot[]): void {
    this.#condense(length, air, lots);
    const { steps, stepDays } = this.#grid;
    const end = steps * stepDays;
    if (day + length >= end - sameTime && end >= this.#wholeDays - sameTime) this.#note(air);
  }

  /** Adds half a step's worth of what condenses at one end of it. */
  #condense(length: number, air: StageAir, lots: readonly RunningLot[]): void {
    const seconds = 0.5 * length * secondsPerDay;
    for (let box = 0; box < this.#tree.size; box++) {
      this.#condensed[box]! += seconds * Math.max(0, air.condensing[box]!);
    }
    for (const lot of lots) this.#settlesOn(lot.given, lot.stays[lot.stay]!.box, air, seconds);
  }

  /** Water settling on produce that is drier than the air around it. */
  #settlesOn(given: GivenOff, box: number, air: StageAir, seconds: number): void {
    if (box >= this.#tree.size) return;
    this.#condensed[box]! += seconds * Math.max(0, given.conductance * air.density[box]! - given.supply);
  }

  #note(air: StageAir): void {
    this.#wholeDays++;
    for (let box = 0; box < this.#tree.size; box++) {
      this.#humidity[box]!.push(air.density[box]! / this.#tree.saturationDensity[box]!);
      this.#ethylene[box]!.push(air.ethylene[box]!);
    }
  }

  outcome(): BoxOutcome[] {
    return Array.from(this.#condensed, (condensed, box) => ({
      relativeHumidity: this.#humidity[box]!,
      ethylene: this.#ethylene[box]!,
      condensed,
    }));
  }
}
