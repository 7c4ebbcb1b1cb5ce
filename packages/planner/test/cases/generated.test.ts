import type { Highs } from "highs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { boundOf } from "../../src/proof/boundOf.js";
import { loadSolver } from "../../src/proof/index.js";
import { prepare } from "../../src/search/prepare.js";
import { judgedByAll, tractable } from "./judgedByAll.js";
import { randomRequest } from "./randomRequest.js";
import { Tally } from "./tally.js";

/** Lots kept whole: every programme of every lot (none left out as unpromising) at every setting of every vent. */
const whole = { lots: [2, 5], places: [2, 4], wraps: [0, 2], days: [3, 7], ripening: 1 } as const;
/** The same with every way to part a lot in two. */
const divided = { lots: [1, 2], places: [1, 3], wraps: [0, 2], days: [3, 7], ripening: 1 } as const;
/** Larger ones of both kinds, of seeds far from those looked at while the search was made. */
const wholeAfresh = { lots: [3, 5], places: [3, 4], wraps: [0, 2], days: [3, 8], ripening: 1 } as const;
const dividedAfresh = { lots: [1, 3], places: [2, 4], wraps: [0, 1], days: [3, 8], ripening: 1 } as const;

const groups = [
  { name: "lots kept whole", size: whole, parted: false, seeds: tractable(whole, false, 700, 100) },
  { name: "lots that may be parted", size: divided, parted: true, seeds: tractable(divided, true, 250, 90) },
  {
    name: "lots kept whole, afresh",
    size: wholeAfresh,
    parted: false,
    seeds: tractable(wholeAfresh, false, 900, 60, 80_000),
  },
  {
    name: "lots that may be parted, afresh",
    size: dividedAfresh,
    parted: true,
    seeds: tractable(dividedAfresh, true, 700, 60, 90_000),
  },
];

/** The plan is the best of all in at least this share of cases, and within this of it in the rest. */
const leastFound = 0.98;
const worstGap = 0.01;

/** Relaxations solved for a small case: enough to tell apart vents and a few levels of each gas. */
const relaxations = 12;

describe.each(groups)("against every choice of $name", ({ name, size, parted, seeds }) => {
  const tally = new Tally();
  const gaps: number[] = [];
  let solver: Highs;
  beforeAll(async () => {
    solver = await loadSolver();
  });
  afterAll(() => {
    const middle = gaps.sort((a, b) => a - b)[Math.floor(gaps.length / 2)] ?? 0;
    console.info(`${name}: ${tally}; gap to the bound in the middle ${(100 * middle).toFixed(1)} %`);
  });

  it.each(seeds)(
    "the plan is as good as the best of all, and neither is better than the bound (seed %i)",
    (seed) => {
      const { gap, best, value, problem, difference } = judgedByAll(randomRequest(seed, size), parted);
      tally.add(gap);
      // As if no plan were known: a bound held down to the value of a plan that is the best of all could not be seen to lie above it.
      const unaware = { mostRelaxations: relaxations, value: Number.POSITIVE_INFINITY };
      const { bound } = boundOf(solver, prepare(problem), unaware);
      gaps.push(value > 0 ? Math.max(0, 1 - bound / value) : 0);
      // The plan may part lots where every choice tried keeps them whole, and so lie below them all.
      expect(bound, `bound above the best known: ${difference}`).toBeLessThanOrEqual(
        Math.min(best, value) * (1 + 1e-9) + 1e-9,
      );
      expect(gap, difference).toBeLessThanOrEqual(worstGap);
    },
  );

  it("the plan is the best of all in at least 98 of 100 cases in which that is known", () => {
    expect(tally.known, `${name}: ${tally}`).toBeGreaterThan(0.7 * seeds.length);
    expect(tally.found, `${name}: ${tally}`).toBeGreaterThanOrEqual(leastFound * tally.known);
  });
});
