import { handoutContext } from "@keepwright/handout";
import type { Plan } from "@keepwright/planner";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { proofLines } from "../../src/view/proofView.js";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);

/** The first line of an invented proof. */
function found(value: number, bound: number): string {
  const proof = { ...handMadePlan.proof, value, bound, gap: 1 - bound / value, unit: "g" };
  return proofLines(context, { ...handMadePlan, proof } as unknown as Plan)![0]!;
}

describe("how much better a plan could be, in words", () => {
  it("tells what at most can be saved no smaller than it is, and what at least is lost no larger", () => {
    expect(found(210, 207)).toContain("at most 2%");
    expect(found(210, 199)).toContain("less than 190 g");
  });

  it("holds as told, whatever the figures", () => {
    const figure = fc.double({ min: 1, max: 940, noNaN: true });
    fc.assert(
      fc.property(figure, fc.double({ min: 0.01, max: 0.998, noNaN: true }), (value, part) => {
        const line = found(value, value * part);
        expect(Number(/at most (\d+)%/.exec(line)![1])).toBeGreaterThanOrEqual(100 * (1 - part) - 1e-6);
        expect(Number(/less than (\d+) g/.exec(line)![1])).toBeLessThanOrEqual(value * part);
      }),
    );
  });
});
