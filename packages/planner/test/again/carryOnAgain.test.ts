import { addDays } from "@keepwright/quantities";
import { describe, expect, it } from "vitest";
import { carryOnAgain } from "../../src/again/carryOnAgain.js";
import { planAgain, planInHand } from "../../src/again/planAgain.js";
import { takeInHand } from "../../src/again/takeInHand.js";
import { HappenedError } from "../../src/problem/inputError.js";
import { faultsOf, later } from "../carryOn/support.js";
import { randomRequest } from "../cases/randomRequest.js";
import { corrections, type HaulRequest, withLots } from "./corrections.js";

const size = { lots: [4, 7], places: [3, 5], wraps: [1, 3], days: [6, 9] } as const;
const asked = (seed: number) => randomRequest(seed, size) as ReturnType<typeof randomRequest> & HaulRequest;

describe("a plan carried on again after a correction", () => {
  it.each([31, 32, 33, 34])("has no fault and is the same each time (seed %i)", (seed) => {
    const request = asked(seed);
    const first = planInHand(request);
    const carried = later({ request, plan: first.plan }, 2);
    const { household, days, from } = carried.plan;
    const inHand = takeInHand(
      { ...request, haul: carried.haul, household: { ...household, days }, from },
      carried.plan,
    );
    for (const { correct } of corrections) {
      const corrected = withLots(request, correct(request.haul.lots));
      const { plan } = planAgain(first, corrected);
      const { haul, kitchen, catalogue } = corrected;
      const on = { plan, haul, kitchen, catalogue, on: addDays(plan.from, 2), happened: { version: 1 } };
      const again = carryOnAgain(inHand, on);
      expect(faultsOf({ request: corrected, plan }, again.told)).toEqual([]);
      expect(carryOnAgain(inHand, on).told).toEqual(again.told);
      expect(again.told.haul).toEqual(later({ request: corrected, plan }, 2).haul);
    }
  });

  it("is refused where nothing is left", () => {
    const request = asked(31);
    const inHand = planInHand(request);
    const { haul, kitchen, catalogue } = request;
    const lots = haul.lots.map(({ id }) => ({ lot: id, thrownOut: "all" }));
    const on = addDays(inHand.plan.from, 2);
    const happened = { version: 1, lots };
    expect(() => carryOnAgain(inHand, { plan: inHand.plan, haul, kitchen, catalogue, on, happened })).toThrow(
      HappenedError,
    );
  });
});
