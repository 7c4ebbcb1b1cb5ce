import { airTree } from "../climate/airTree.js";
import { BoxRecorder } from "./boxRecorder.js";
import { LotCompiler } from "./compiler.js";
import { timeGrid } from "./grid.js";
import { lotOutcome } from "./outcome.js";
import { Run } from "./run.js";
import type { Simulation, SimulationOutcome } from "./simulation.js";

/**
 * Simulates lots in boxes of air from day 0 to the horizon: what happens to each, and to the air.
 *
 * Second order in the step (Heun), the air settled at the start and end of each; ends, moves and ripening are located within the step.
 * A lot that has ended stays where it is and goes on giving off ethylene and vapour. Pure: the same simulation gives the same outcome to
 * the last bit. Throws RangeError naming what is wrong: a box before its neighbour, an exchange or mass not above 0, a stay in no box.
 * Method, error and limits: docs/model/time-stepping.md.
 *
 * @param compiler hand on one and the same for many simulations with the same wraps to save work
 */
export function simulate(
  simulation: Simulation,
  compiler: LotCompiler = new LotCompiler(simulation.wraps),
): SimulationOutcome {
  const tree = airTree(simulation.boxes, simulation.room);
  const grid = timeGrid(simulation.horizonDays, simulation.stepDays);
  const lots = simulation.lots.map((lot) => compiler.lot(lot, tree));
  const recorder = new BoxRecorder(tree, grid);
  const whole = simulation.outcome !== "ends";
  new Run(tree, grid, lots, whole ? { daily: "state", listener: recorder } : { daily: "nothing" }).run();
  return { lots: lots.map(lotOutcome), boxes: recorder.outcome() };
}
