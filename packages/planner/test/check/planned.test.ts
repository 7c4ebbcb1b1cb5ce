import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { planHaul } from "../../src/search/planHaul.js";
import { randomRequest } from "../cases/randomRequest.js";

const size = { lots: [1, 6], places: [1, 7], wraps: [0, 4], days: [3, 10] } as const;

describe("planHaul", () => {
  it("makes plans without fault, no worse than everything unsorted, for any haul in any kitchen", () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), (seed) => {
        const request = randomRequest(seed, size);
        const plan = planHaul(request);
        expect(checkPlan({ ...request, plan })).toEqual([]);
        expect(plan.objective.total).toBeLessThanOrEqual(plan.unsorted.objective.total + 1e-6);
      }),
      { numRuns: 20, seed: 7, endOnFailure: true },
    );
  });
});
