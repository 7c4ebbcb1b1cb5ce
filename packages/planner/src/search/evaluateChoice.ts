import type { Problem } from "../problem/problem.js";
import type { Choice, Programme } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { prepare } from "./prepare.js";

/** Judges a choice in full: the whole kitchen simulated together, exact eating days, the objective by its terms. */
export const evaluate = (problem: Problem, choice: Choice): Evaluation =>
  evaluatePrepared(prepare(problem), choice);

/** For each lot, the programmes the planner chooses among (for a part of a lot as for the whole). */
export const allProgrammes = (problem: Problem): Programme[][] => {
  const prepared = prepare(problem);
  return problem.lots.map(({ index }) => prepared.options(index).map((option) => option.programme));
};
