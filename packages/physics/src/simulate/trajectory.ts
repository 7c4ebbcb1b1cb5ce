import { type AirTree, airTree } from "../climate/airTree.js";
import { type CoarseSteps, coarseSteps } from "./coarse.js";
import { LotCompiler } from "./compiler.js";
import { type DayAir, dayAirOf } from "./dayAir.js";
import { type Grid, timeGrid } from "./grid.js";
import { RecordedOutcome } from "./outcome.js";
import { Run } from "./run.js";
import { lotRooms, type RunningLot } from "./runningLot.js";
import { sampleRates, sampleSteps } from "./samples.js";
import type { LotOutcome, Simulation } from "./simulation.js";
import { type Tape, TapeRecorder } from "./tape.js";

/** A simulation with everything on record that is needed to judge changes to it (see `judgeChange`). Nothing in it changes. */
export interface Trajectory {
  readonly simulation: Simulation;
  readonly lots: readonly LotOutcome[];
  /** For `judgeChange` and `followLot` alone. */
  readonly inner: TrajectoryRecord;
}

export interface TrajectoryRecord {
  readonly compiler: LotCompiler;
  readonly tree: AirTree;
  readonly grid: Grid;
  readonly running: readonly RunningLot[];
  readonly tape: Tape;
  /** The steps changed lots are followed in. */
  readonly steps: CoarseSteps;
  /** Step whose start stands for each day: the one nearest its middle. */
  readonly samples: readonly number[];
  readonly air: DayAir;
  /** d(state)/dt of each lot there, in the mean air of the day; flat by sample, lot and state. */
  readonly sampleRates: Float64Array;
  /** Step that begins with each whole day of the horizon. */
  readonly dayStarts: readonly number[];
}

/** Steps beyond the regular ones that the moves of these lots can bring: a cut at each move, and two more to close in on ripeness. */
const mostCuts = (lots: readonly RunningLot[]): number =>
  lots.reduce((sum, lot) => sum + 4 * (lot.stays.length - 1), 0);

/**
 * Simulates and keeps the whole course of it. Same numbers as `simulate`; the boxes' own outcome is left out.
 *
 * @param compiler hand on the one of an earlier trajectory with the same wraps (`inner.compiler`) to save work
 */
export function trajectory(
  simulation: Simulation,
  compiler: LotCompiler = new LotCompiler(simulation.wraps),
): Trajectory {
  const tree = airTree(simulation.boxes, simulation.room);
  const grid = timeGrid(simulation.horizonDays, simulation.stepDays);
  if (!Number.isInteger(simulation.horizonDays)) {
    throw new RangeError(
      `A horizon of ${simulation.horizonDays} days cannot be judged in. Give a whole number of days.`,
    );
  }
  if (simulation.lots.some(({ withheld }) => withheld?.ethylene || withheld?.vapour)) {
    throw new RangeError("A record is of whole lots. Use simulate where something is withheld.");
  }
  const rooms = lotRooms(simulation.lots.length);
  const running = simulation.lots.map((lot, index) => compiler.lot(lot, tree, rooms[index]));
  const daily = simulation.outcome === "ends" ? "nothing" : "state";
  const recorder = new TapeRecorder(tree, running, grid.steps + mostCuts(running));
  new Run(tree, grid, running, { daily, listener: recorder }).run();
  const tape = recorder.tape();
  return {
    simulation,
    lots: running.map((lot) => new RecordedOutcome(lot)),
    inner: new Recorded({ compiler, tree, grid, running, tape }),
  };
}

type Ran = Pick<TrajectoryRecord, "compiler" | "tree" | "grid" | "running" | "tape">;

/** The record of a run. What only judging changes asks for is worked out when first asked for: of two choices simulated about one is ever gone on from. */
class Recorded implements TrajectoryRecord {
  readonly compiler: LotCompiler;
  readonly tree: AirTree;
  readonly grid: Grid;
  readonly running: readonly RunningLot[];
  readonly tape: Tape;
  #steps: CoarseSteps | undefined;
  #samples: readonly number[] | undefined;
  #air: DayAir | undefined;
  #sampleRates: Float64Array | undefined;
  #dayStarts: readonly number[] | undefined;

  constructor({ compiler, tree, grid, running, tape }: Ran) {
    this.compiler = compiler;
    this.tree = tree;
    this.grid = grid;
    this.running = running;
    this.tape = tape;
  }

  get steps(): CoarseSteps {
    this.#steps ??= coarseSteps(this.tape);
    return this.#steps;
  }

  get samples(): readonly number[] {
    this.#samples ??= sampleSteps(this.tape, this.grid, 0.5);
    return this.#samples;
  }

  get air(): DayAir {
    this.#air ??= dayAirOf(this.tape, this.steps, this.tree, this.grid);
    return this.#air;
  }

  get sampleRates(): Float64Array {
    this.#sampleRates ??= sampleRates(this.tape, this.running, this.samples, this.air);
    return this.#sampleRates;
  }

  get dayStarts(): readonly number[] {
    this.#dayStarts ??= sampleSteps(this.tape, this.grid, 0);
    return this.#dayStarts;
  }
}
