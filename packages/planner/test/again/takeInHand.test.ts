import { describe, expect, it } from "vitest";
import { planAgain, planInHand } from "../../src/again/planAgain.js";
import { takeInHand } from "../../src/again/takeInHand.js";
import { request } from "../support.js";

const asked = request([
  { id: "apples", commodity: "apple", grams: 900 },
  { id: "broccoli", commodity: "broccoli", grams: 400 },
  { id: "carrots", commodity: "carrot", grams: 500 },
]);
const corrected = request([
  { id: "apples", commodity: "apple", grams: 600 },
  { id: "broccoli", commodity: "broccoli", grams: 400 },
  { id: "carrots", commodity: "carrot", grams: 500 },
]);

describe("a plan taken in hand", () => {
  const made = planInHand(asked);
  const taken = takeInHand(asked, structuredClone(made.plan));
  it("is judged as where it was made", () => {
    expect(taken.evaluation.objective.total).toBeCloseTo(made.evaluation.objective.total, 9);
  });
  it("leads to the same plan after a correction as the one it is a copy of", () => {
    expect(planAgain(taken, corrected).plan).toEqual(planAgain(made, corrected).plan);
  });
  it("is refused where it is of another haul", () => {
    const other = request([{ id: "pears", commodity: "pear", grams: 500 }]);
    expect(() => takeInHand(other, made.plan)).toThrow();
  });
});
