import { describe, expect, it } from "vitest";
import { planAgain, planInHand } from "../../src/again/planAgain.js";
import { checkPlan } from "../../src/check/index.js";
import { evaluatePrepared } from "../../src/search/evaluate.js";
import { planHaul } from "../../src/search/planHaul.js";
import { prepareAfter } from "../../src/search/prepare.js";
import { startAfter } from "../../src/search/searchAgain.js";
import { randomRequest } from "../cases/randomRequest.js";
import { bound, lot, request } from "../support.js";
import { corrections, type HaulRequest, withLots } from "./corrections.js";

const rounding = 1e-6;
const small = { lots: [2, 5], places: [2, 4], wraps: [1, 3], days: [3, 7] } as const;
const larger = { lots: [7, 9], places: [4, 7], wraps: [2, 4], days: [4, 8] } as const;
const asked = (seed: number, size: Parameters<typeof randomRequest>[1]) =>
  randomRequest(seed, size) as ReturnType<typeof randomRequest> & HaulRequest;

describe.each([
  { name: "small", size: small, seeds: [11, 12, 13] },
  { name: "larger", size: larger, seeds: [21, 22] },
])("planning again after a correction, in $name hauls", ({ size, seeds }) => {
  it.each(seeds)(
    "gives a plan without fault, never worse than where it began, the same each time (seed %i)",
    (seed) => {
      const before = asked(seed, size);
      const inHand = planInHand(before);
      for (const { correct } of corrections) {
        const corrected = withLots(before, correct(before.haul.lots));
        const again = planAgain(inHand, corrected);
        expect(checkPlan({ ...corrected, plan: again.plan })).toEqual([]);
        const prepared = prepareAfter(inHand.prepared, again.prepared.problem);
        const start = evaluatePrepared(prepared, startAfter(prepared, inHand.prepared, inHand.evaluation));
        expect(again.plan.objective.total).toBeLessThanOrEqual(start.objective.total + rounding);
        expect(again.plan.objective.total).toBeLessThanOrEqual(
          again.plan.unsorted.objective.total + rounding,
        );
        expect(planAgain(inHand, corrected).plan).toEqual(again.plan);
      }
    },
  );
});

describe("planning again", () => {
  it("finds what planning from nothing finds in most small cases", () => {
    const worse: string[] = [];
    let cases = 0;
    for (const seed of [31, 32, 33, 34, 35]) {
      const before = asked(seed, small);
      const inHand = planInHand(before);
      for (const { what, correct } of corrections) {
        const corrected = withLots(before, correct(before.haul.lots));
        cases++;
        const fromNothing = planHaul(corrected).objective.total;
        const again = planAgain(inHand, corrected).plan.objective.total;
        if (again > fromNothing + rounding) worse.push(`seed ${seed}, ${what}: ${again - fromNothing} g`);
      }
    }
    expect(cases).toBe(20);
    expect(worse.length, worse.join("\n")).toBeLessThan(cases / 4);
  });

  it("does not depend on what was kept: a plan from nothing is the same in the old kitchen and in a new one", () => {
    const before = asked(41, small);
    const corrected = withLots(before, corrections[0]!.correct(before.haul.lots));
    const inHand = planInHand(before);
    const again = planAgain(inHand, corrected);
    const anew = { ...inHand, prepared: planInHand(before).prepared };
    expect(planAgain(anew, corrected).plan).toEqual(again.plan);
  });

  it("takes a moved thing to lie where the person put it", () => {
    const lots = [lot("apple", 900), lot("spinach", 300), lot("tomato", 500)];
    const inHand = planInHand(request(lots));
    const arrangement = { version: 1, lots: [{ lot: "spinach", place: "shelf", wrap: "none" }] };
    const moved = planAgain(inHand, { ...request(lots), arrangement });
    const [spinach] = moved.plan.lots.filter((part) => part.lot === "spinach");
    expect(spinach!.stays).toMatchObject([{ place: "shelf", wrap: "none" }]);
    expect(moved.plan.lots).toHaveLength(inHand.plan.lots.length);
  });

  it("plans from nothing where the kitchen has other places", () => {
    const lots = [lot("apple", 900), lot("spinach", 300)];
    const other = { ...request(lots), kitchen: bound(lots).kitchen };
    const kitchen = { ...other.kitchen, places: other.kitchen.places.slice(0, 3) };
    const again = planAgain(planInHand(request(lots)), { ...other, kitchen });
    expect(again.plan).toEqual(planHaul({ ...other, kitchen }));
  });
});
