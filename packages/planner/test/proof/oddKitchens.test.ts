import type { Highs } from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { ventSettings } from "../../src/problem/kitchen.js";
import { bindProblem, type Problem } from "../../src/problem/problem.js";
import { boundOf } from "../../src/proof/boundOf.js";
import { loadSolver } from "../../src/proof/index.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { planProblem } from "../../src/search/planHaul.js";
import { type Prepared, prepare } from "../../src/search/prepare.js";
import { Draw } from "../cases/randomRequest.js";
import { anyParts, oddRequest } from "./oddRequest.js";

const size = { lots: [1, 4], places: [2, 5], wraps: [0, 5], days: [1, 9] } as const;
const seeds = Array.from({ length: 40 }, (_, index) => 5000 + index);
const steps = 25;

/** Requests that a check of odd kitchens accepts; the rest say what is wrong with them. */
function accepted(seed: number): Problem | undefined {
  try {
    return bindProblem(oddRequest(seed, size));
  } catch (error) {
    if ((error as Error).name === "KitchenError") return undefined;
    throw error;
  }
}

/** Objective of a choice that began anyhow, lots in parts, and was changed at random for as long as that did no harm. */
function improvedAtRandom(prepared: Prepared, seed: number): number {
  const { problem } = prepared;
  const draw = new Draw(seed + 0.75);
  let lots = problem.lots.map((lot) => anyParts(draw, problem, lot));
  const vents = problem.vents.map(() => draw.one(ventSettings));
  const objectiveOf = (parts: typeof lots): number =>
    evaluatePrepared(prepared, { parts: parts.flat(), vents }).objective.total;
  let value = objectiveOf(lots);
  for (let step = 0; step < steps; step++) {
    const lot = draw.one(problem.lots);
    const other = lots.with(lot.index, anyParts(draw, problem, lot));
    const found = objectiveOf(other);
    if (found <= value) [lots, value] = [other, found];
  }
  return value;
}

describe("the bound in kitchens as odd as may be", () => {
  let solver: Highs;
  beforeAll(async () => {
    solver = await loadSolver();
  });

  it.each(seeds)("is above neither the plan nor anything found at random (seed %i)", (seed) => {
    const problem = accepted(seed);
    if (!problem) return;
    const prepared = prepare(problem);
    const best = Math.min(planProblem(problem).objective.total, improvedAtRandom(prepared, seed));
    const { bound } = boundOf(solver, prepared, { mostRelaxations: 4, value: Number.POSITIVE_INFINITY });
    expect(bound).toBeLessThanOrEqual(best * (1 + 1e-9));
  });

  it("is tried in most of them", () => {
    expect(seeds.filter(accepted).length).toBeGreaterThan(seeds.length / 3);
  });
});
