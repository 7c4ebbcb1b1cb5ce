import { handoutContext, lotReasonLines } from "@keepwright/handout";
import type { LotReason } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const life = (early: number, middle: number, late: number) => ({ early, middle, late, unit: "d" as const });
const elsewhere = (place: string, more: object = {}) => ({
  place,
  placeKind: "crisper drawer" as const,
  wrap: "none" as const,
  life: life(2, 3, 4),
  endedBy: "senescence" as const,
  readyOnDay: 0,
  worseBy: { value: 10, unit: "g" as const },
  tooFull: false,
  ...more,
});
const reason: LotReason = {
  part: "a",
  commodity: "moonleaf",
  here: { ...elsewhere("left"), life: life(8, 10, 12) },
  elsewhere: [
    elsewhere("right"),
    elsewhere("shelf", { tooFull: true }),
    elsewhere("counter", { readyOnDay: null }),
    elsewhere("cupboard"),
  ],
  blame: [
    {
      part: "b",
      commodity: "dawnfruit",
      lifeWithout: { value: 14, unit: "d" },
      daysLost: { value: 4, unit: "d" },
      share: 0.9,
    },
    {
      part: "d",
      commodity: "pinkcitrus",
      lifeWithout: { value: 10.1, unit: "d" },
      daysLost: { value: 0.1, unit: "d" },
      share: 0.1,
    },
  ],
};

describe("why here", () => {
  it("speaks of the nearest other places and of neighbours that make a difference", () => {
    expect(lotReasonLines(handoutContext(inventedCatalogue), handMadePlan, reason)).toEqual([
      "Right drawer (loose, no wrap): 2 to 4 days, ended by ageing.",
      "Shelves (loose, no wrap): 2 to 4 days, ended by ageing; but there is no room.",
      "Counter: no ripening there.",
      "Without dawnfruits, part 1 of 2 in the kitchen: about 14 days instead of about 10 days.",
    ]);
  });
});
