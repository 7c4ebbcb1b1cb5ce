import { type AirTree, airTree } from "../climate/airTree.js";
import type { End } from "./beyondHorizon.js";
import { type CoarseSteps, coarseSteps } from "./coarse.js";
import { LotCompiler } from "./compiler.js";
import { type DayAir, dayAirOf } from "./dayAir.js";
import { Estimator } from "./estimate.js";
import { type Grid, timeGrid } from "./grid.js";
import { lotOutcome } from "./outcome.js";
import { Run } from "./run.js";
import type { RunningLot } from "./runningLot.js";
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
  /** Where an estimate finds each lot to end when nothing changes, to compare estimates with. */
  readonly unchanged: readonly End[];
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
  const running = simulation.lots.map((lot) => compiler.lot(lot, tree));
  const daily = simulation.outcome === "ends" ? "nothing" : "state";
  const recorder = new TapeRecorder(tree, running, grid.steps + mostCuts(running));
  new Run(tree, grid, running, { daily, listener: recorder }).run();
  const tape = recorder.tape();
  const samples = sampleSteps(tape, grid, 0.5);
  const steps = coarseSteps(tape);
  const air = dayAirOf(tape, steps, tree, grid);
  const inner: TrajectoryRecord = {
    compiler,
    tree,
    grid,
    running,
    tape,
    steps,
    samples,
    air,
    sampleRates: sampleRates(tape, running, samples, air),
    dayStarts: sampleSteps(tape, grid, 0),
    unchanged: [],
  };
  const made = { simulation, lots: running.map(lotOutcome), inner };
  const estimator = new Estimator(made);
  return { ...made, inner: { ...inner, unchanged: running.map((_, lot) => estimator.unchanged(lot)) } };
}
