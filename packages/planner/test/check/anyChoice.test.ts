import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { bindProblem, type Problem } from "../../src/problem/problem.js";
import type { Choice, Part } from "../../src/problem/programme.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { planOf } from "../../src/search/planOf.js";
import { prepare } from "../../src/search/prepare.js";
import { Draw, randomRequest } from "../cases/randomRequest.js";

const seeds = Array.from({ length: 120 }, (_, seed) => seed);
const size = { lots: [1, 7], places: [1, 7], wraps: [0, 4], days: [3, 12] } as const;

/** Any choice at all, good or bad: every lot in one of its programmes or split between two, vents as they fall. */
function anyChoice(draw: Draw, problem: Problem): Choice {
  const prepared = prepare(problem);
  const parts = problem.lots.flatMap(({ index, portions, splitUnit }): Part[] => {
    const part = (count: number): Part => ({
      lot: index,
      portions: count,
      programme: draw.one(prepared.options(index)).programme,
    });
    const split = draw.chance(0.3) && portions >= 2 * splitUnit;
    return split ? [part(splitUnit), part(portions - splitUnit)] : [part(portions)];
  });
  return { parts, vents: problem.vents.map(() => draw.one(["open", "half", "closed"] as const)) };
}

describe("a plan written out from any choice, good or bad", () => {
  it.each(seeds)("tells nothing that is not so (seed %i)", (seed) => {
    const request = randomRequest(seed, size);
    const problem = bindProblem(request);
    const prepared = prepare(problem);
    const plan = planOf(prepared, evaluatePrepared(prepared, anyChoice(new Draw(seed + 1000), problem)));
    expect(checkPlan({ ...request, plan })).toEqual([]);
  });
});
