import { handoutContext, planText, planView, unitSystems } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { anyPlan } from "../fixtures/anyPlan.js";
import { inventedCatalogue } from "../fixtures/catalogue.js";

describe("any plan", () => {
  it("becomes words without a hole, a missing figure or a lost lot", () => {
    fc.assert(
      fc.property(anyPlan, fc.constantFrom(...unitSystems), (plan, units) => {
        const context = handoutContext(inventedCatalogue, { units });
        const view = planView(context, plan);
        expect(view.lives.map((life) => life.lot).sort()).toEqual(plan.lots.map(({ id }) => id).sort());
        expect(new Set(view.lives.map(({ name }) => name.toLowerCase())).size).toBe(plan.lots.length);
        expect(planText(context, view)).not.toMatch(/undefined|NaN|Infinity|\{|\}|∞/);
      }),
      { numRuns: 200 },
    );
  });
});
