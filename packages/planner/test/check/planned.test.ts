import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan, type PlanRule } from "../../src/check/index.js";
import { planHaul } from "../../src/search/planHaul.js";
import { randomRequest } from "../cases/randomRequest.js";

/** Plans are known to tell of moves to nowhere: see knownFaults.test.ts. */
const knownFault: PlanRule = "move to somewhere";
const size = { lots: [1, 6], places: [1, 7], wraps: [0, 4], days: [3, 10], plain: true } as const;

describe("planHaul", () => {
  it("makes plans without fault, no worse than everything unsorted, for any haul in any kitchen", () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), (seed) => {
        const request = randomRequest(seed, size);
        const plan = planHaul(request);
        expect(checkPlan({ ...request, plan }).filter(({ rule }) => rule !== knownFault)).toEqual([]);
        expect(plan.objective.total).toBeLessThanOrEqual(plan.unsorted.objective.total + 1e-6);
      }),
      { numRuns: 20, seed: 7, endOnFailure: true },
    );
  });
});
