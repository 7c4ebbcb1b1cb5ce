import { describe, expect, it } from "vitest";
import { judgementSchema } from "../../src/arrangement/judgement.js";
import { planHaul } from "../../src/search/planHaul.js";
import { randomRequest } from "../cases/randomRequest.js";
import { lot, request } from "../support.js";
import { asPlanned, judged } from "./support.js";

/** Rounding of sums of a few thousand grams. */
const rounding = 1e-6;

describe("the plan's own arrangement", () => {
  const size = { lots: [2, 6], places: [2, 5], wraps: [0, 3], days: [3, 8] } as const;
  const seeds = [3, 14, 15, 92, 65, 35, 89, 79];

  it.each(seeds)("is worth what the plan is worth, term by term (seed %i)", (seed) => {
    const asked = randomRequest(seed, size);
    const plan = planHaul(asked);
    const judgement = judged(asked, asPlanned(plan));
    expect(judgement.plan).toEqual(plan);
    for (const term of Object.values(judgement.difference)) expect(Math.abs(term)).toBeLessThan(rounding);
    expect(judgement.wasted.yours.grams).toBeCloseTo(plan.expectedWaste.value, 6);
    expect(judgement.conflicts).toEqual([]);
    expect(judgement.notMentioned).toEqual({ lots: [], vents: [] });
    expect(judgementSchema.safeParse(judgement).success).toBe(true);
  });

  it("also where lots are split, leaves twisted off and washed leaves dried", () => {
    const lots = [
      lot("avocado", 1020, { pieces: 6, ripeness: "unripe" }),
      lot("banana", 900, { pieces: 6, ripeness: "unripe" }),
      lot("carrot", 700, { tops: true }),
      lot("spinach", 300, { washed: true }),
    ];
    const asked = request(lots, undefined, { people: 1, portionsPerPersonPerDay: 2 });
    const plan = planHaul(asked);
    expect(plan.lots.length).toBeGreaterThan(lots.length);
    const { difference, yours } = judged(asked, asPlanned(plan));
    expect(Math.abs(difference.total)).toBeLessThan(rounding);
    expect(yours.lots.map(({ preparation }) => preparation)).toEqual(
      plan.lots.map(({ preparation }) => preparation),
    );
  });
});
