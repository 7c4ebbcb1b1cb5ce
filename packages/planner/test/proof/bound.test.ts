import type { Highs } from "highs";
import { beforeAll, describe, expect, it } from "vitest";
import { bindProblem } from "../../src/problem/problem.js";
import { boundOf } from "../../src/proof/boundOf.js";
import { loadSolver, provePlan } from "../../src/proof/index.js";
import { planProblem } from "../../src/search/planHaul.js";
import { prepare } from "../../src/search/prepare.js";
import { randomRequest } from "../cases/randomRequest.js";

const size = { lots: [6, 14], places: [4, 8], wraps: [1, 5], days: [4, 9] } as const;
const seeds = Array.from({ length: 24 }, (_, index) => 400 + index);

let solver: Highs;
beforeAll(async () => {
  solver = await loadSolver();
});

describe("the bound on hauls too large to try every choice", () => {
  it.each(seeds)("is not above what the planner finds, though it knows of no plan (seed %i)", (seed) => {
    const problem = bindProblem(randomRequest(seed, size));
    const { total } = planProblem(problem).objective;
    const known = { mostRelaxations: 6, value: Number.POSITIVE_INFINITY };
    const { bound } = boundOf(solver, prepare(problem), known);
    expect(bound).toBeGreaterThan(0);
    expect(bound).toBeLessThanOrEqual(total * (1 + 1e-9));
  });

  it("does not fall as more is told apart, and is the same each time", () => {
    const problem = bindProblem(randomRequest(404, size));
    const { total } = planProblem(problem).objective;
    const bounds = [1, 5, 15].map(
      (mostRelaxations) => provePlan(problem, total, solver, { mostRelaxations }).bound,
    );
    expect(bounds).toEqual([...bounds].sort((a, b) => a - b));
    expect(provePlan(problem, total, solver, { mostRelaxations: 15 }).bound).toBe(bounds.at(-1));
  });

  it("tells value, bound and gap as a fraction of the value", () => {
    const problem = bindProblem(randomRequest(405, size));
    const { total } = planProblem(problem).objective;
    const { value, bound, gap } = provePlan(problem, total, solver, { mostRelaxations: 1 });
    expect(value).toBe(total);
    expect(gap).toBeCloseTo((value - bound) / value, 12);
  });

  it("counts what is wanted for a day as nothing, so that the bound holds for it too", () => {
    const { haul, ...rest } = randomRequest(406, size);
    const { lots } = haul as { lots: object[] };
    const pears = {
      id: "pears",
      commodity: "pear",
      grams: 800,
      ripeness: "unripe",
      wanted: { when: "by", day: 2 },
    };
    const problem = bindProblem({ ...rest, haul: { lots: [...lots, pears] } });
    const { total } = planProblem(problem).objective;
    const known = { mostRelaxations: 6, value: Number.POSITIVE_INFINITY };
    expect(boundOf(solver, prepare(problem), known).bound).toBeLessThanOrEqual(total);
  });
});
