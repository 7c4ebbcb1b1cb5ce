import { afterAll, describe, expect, it } from "vitest";
import { judgedByAll, tractable } from "./judgedByAll.js";
import { randomRequest } from "./randomRequest.js";
import { same, Tally } from "./tally.js";

/** Lots kept whole: every programme of every lot (none left out as unpromising) at every setting of every vent. */
const whole = { lots: [2, 5], places: [2, 4], wraps: [0, 2], days: [3, 7], ripening: 1 } as const;
/** The same with every way to part a lot in two. */
const divided = { lots: [1, 2], places: [1, 3], wraps: [0, 2], days: [3, 7], ripening: 1 } as const;
/** Larger ones of both kinds, of seeds far from those looked at while the search was made. */
const wholeAfresh = { lots: [3, 5], places: [3, 4], wraps: [0, 2], days: [3, 8], ripening: 1 } as const;
const dividedAfresh = { lots: [1, 3], places: [2, 4], wraps: [0, 1], days: [3, 8], ripening: 1 } as const;

const groups = [
  { name: "lots kept whole", size: whole, parted: false, seeds: tractable(whole, false, 700, 44) },
  { name: "lots that may be parted", size: divided, parted: true, seeds: tractable(divided, true, 250, 45) },
  {
    name: "lots kept whole, afresh",
    size: wholeAfresh,
    parted: false,
    seeds: tractable(wholeAfresh, false, 900, 22, 80_000),
  },
  {
    name: "lots that may be parted, afresh",
    size: dividedAfresh,
    parted: true,
    seeds: tractable(dividedAfresh, true, 700, 22, 90_000),
  },
];

describe.each(groups)("against every choice of $name", ({ name, size, parted, seeds }) => {
  const tally = new Tally();
  afterAll(() => console.info(`${name}: ${tally}`));

  it.each(seeds)("the plan is as good as the best of all (seed %i)", (seed) => {
    const { gap, difference } = judgedByAll(randomRequest(seed, size), parted);
    tally.add(gap);
    expect(gap, difference).toBeLessThanOrEqual(same);
  });
});
