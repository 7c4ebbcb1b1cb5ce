import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { changesFor } from "../../src/improve/changes/index.js";
import { nextToNothing } from "../../src/improve/nextToNothing.js";
import { planned, wasteOf } from "../../src/improve/planned.js";
import { checkedRequest } from "../../src/improve/triedChange.js";
import { randomRequest } from "../cases/randomRequest.js";

const seeds = fc.nat({ max: 1_000_000 });

describe("any haul in any kitchen", () => {
  const size = { lots: [1, 5], places: [1, 7], wraps: [0, 4], days: [3, 10] } as const;
  it("has only changes that give a valid request and a plan without fault", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const asked = checkedRequest(randomRequest(seed, size));
        for (const { change, request } of changesFor(asked)) {
          const { plan } = planned(request, 1);
          expect(checkPlan({ ...request, plan }), JSON.stringify(change)).toEqual([]);
        }
      }),
      { numRuns: 8, seed: 11, endOnFailure: true },
    );
  });
});

describe("one lot fewer in small cases", () => {
  const size = { lots: [2, 3], places: [2, 3], wraps: [0, 1], days: [3, 8], ripening: 1 } as const;
  it("never wastes more, but for a bite of what its neighbours' damp had kept", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const asked = checkedRequest(randomRequest(seed, size));
        const waste = wasteOf(planned(asked, 1));
        for (const { change, request } of changesFor(asked)) {
          if (change.name !== "lot fewer") continue;
          expect(wasteOf(planned(request, 1)), change.lot.id).toBeLessThan(waste + nextToNothing);
        }
      }),
      { numRuns: 12, seed: 3, endOnFailure: true },
    );
  });
});
