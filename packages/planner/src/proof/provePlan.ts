import type { Highs } from "highs";
import type { Problem } from "../problem/problem.js";
import { prepare } from "../search/prepare.js";
import { boundOf } from "./boundOf.js";
import type { Proof } from "./proof.js";

/** Relaxations solved unless told otherwise. Declared: after these each further one lifts the bound by little. */
const usualRelaxations = 12;

/** What solves linear programmes: HiGHS. */
export type Solver = Highs;

/** The solver of linear programmes, loaded when it is first asked for: a page or a command that proves nothing never fetches it. */
export async function loadSolver(): Promise<Solver> {
  // Its types are those of its CommonJS build, in which the loader is the module itself.
  const { default: load } = (await import("highs")) as unknown as { default: () => Promise<Highs> };
  return load();
}

/**
 * A lower bound on the objective of every plan for a problem, and how far a plan is from it at most.
 *
 * The bound is of the model's own figures: it says that no other plan does much better in the model, not that the model is right. Lots wanted for a day count as costing nothing. Of what
 * is carried on from an earlier plan, what it would cost to turn vents is left out.
 *
 * @param value objective of the plan [g]
 * @param progress told of the bound so far [g] and of the relaxations solved
 */
export function provePlan(
  problem: Problem,
  value: number,
  solver: Solver,
  options: {
    readonly mostRelaxations?: number;
    readonly progress?: (bound: number, relaxations: number) => void;
  } = {},
): Proof {
  const { mostRelaxations = usualRelaxations, progress } = options;
  const { bound, relaxations } = boundOf(solver, prepare(problem), { mostRelaxations, value, progress });
  const low = Math.min(bound, value);
  return { value, bound: low, gap: value > 0 ? 1 - low / value : 0, relaxations };
}
