import type { Highs } from "highs";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { HappenedError } from "../../src/problem/inputError.js";
import type { Kitchen } from "../../src/problem/kitchen.js";
import { bindProblem, type Problem } from "../../src/problem/problem.js";
import { boundOf } from "../../src/proof/boundOf.js";
import { loadSolver, provePlan } from "../../src/proof/index.js";
import { presentProgrammes } from "../../src/search/candidates.js";
import { prepare } from "../../src/search/prepare.js";
import { type Begun, begin, later } from "../carryOn/support.js";
import { bestOfAll, countChoices, everyDivision, everyProgramme } from "../cases/exhaustive.js";
import { randomRequest, type Size } from "../cases/randomRequest.js";
import { Tally } from "../cases/tally.js";

type Account = (begun: Begun, seed: number) => object;

/** Every other lot was left alone, whatever had been planned. */
const leftAlone: Account = ({ plan }, seed) => {
  const left = plan.lots.map(({ lot }) => lot).filter((_, index) => (seed + index) % 2 === 0);
  return { lots: [...new Set(left)].map((lot) => ({ lot, eaten: "none" })) };
};

/** The same, and each was seen good, of another ripeness, cut, moved or wrapped anew, one in turn or two. */
const seenOtherwise: Account = ({ request, plan }, seed) => {
  const { kitchen, catalogue } = request as Begun["request"] & { readonly kitchen: Kitchen };
  const wraps = ["none", ...kitchen.wraps];
  const lots = plan.lots.map(({ id, commodity, form }, index) => {
    const turn = seed + 3 * index;
    const place = kitchen.places[turn % kitchen.places.length]!;
    const ripens = form === "whole" && catalogue.commodities.get(commodity)!.ripening !== undefined;
    const changes = [
      { seenGood: true },
      ripens ? { ripeness: [0.4, 1, 1.5][turn % 3] } : { seenGood: true },
      form === "whole" ? { cut: plan.from } : { hoursOut: 0.5 },
      { place: place.id, since: plan.from },
      { wrap: wraps[turn % wraps.length] },
    ];
    const second = changes[(turn + 2) % 5]!;
    const both = turn % 2 === 0 ? second : {};
    return { lot: id, eaten: "none", done: [], ...both, ...changes[turn % 5]! };
  });
  return { lots };
};

/** Invented plans carried on by a day or two, as an account has it. */
function carriedOn(seed: number, size: Size, account: Account = leftAlone) {
  const request = randomRequest(seed, size);
  const begun = begin(request);
  const days = 1 + (seed % 2);
  const after = later(begun, days, account(begun, seed), { days: 5 });
  const problem = bindProblem({
    ...request,
    haul: after.haul,
    household: { ...after.plan.household, days: after.plan.days },
    from: after.plan.from,
    seed: after.plan.seed,
  });
  return { plan: after.plan, problem };
}

/** Every programme there is, what an earlier plan had before it and left as it lies among them. */
const waysOf = (problem: Problem, parted: boolean) =>
  problem.lots.map((lot) => {
    const all = everyDivision(problem, lot.index, [
      ...everyProgramme(problem, lot.index),
      ...presentProgrammes(problem, lot),
    ]);
    return parted ? all : all.filter(({ length }) => length === 1);
  });

/** Choices of what came home for each of what is left, at most: more are not even planned. */
const fold = 4;

/** The first invented plans that, carried on, have something left and few enough choices to judge them all. */
function tractable(
  size: Size,
  parted: boolean,
  mostChoices: number,
  count: number,
  from: number,
  account: Account = leftAlone,
) {
  const found: ({ seed: number } & ReturnType<typeof carriedOn>)[] = [];
  const choices = (problem: Problem) => countChoices(waysOf(problem, parted), problem.vents.length);
  for (let seed = from; found.length < count; seed++) {
    if (choices(bindProblem(randomRequest(seed, size))) > fold * mostChoices) continue;
    try {
      const carried = carriedOn(seed, size, account);
      if (choices(carried.problem) <= mostChoices) found.push({ seed, ...carried });
    } catch (error) {
      // Everything was eaten: nothing is left to plan.
      if (!(error instanceof HappenedError)) throw error;
    }
  }
  return found;
}

const whole = { lots: [2, 4], places: [2, 4], wraps: [0, 2], days: [4, 6], ripening: 1 } as const;
const parted = { lots: [1, 2], places: [1, 3], wraps: [0, 2], days: [4, 6], ripening: 1 } as const;
const larger = { lots: [6, 12], places: [4, 7], wraps: [1, 5], days: [5, 8] } as const;

const groups = [
  { name: "lots kept whole", divided: false, cases: tractable(whole, false, 700, 60, 20_000) },
  {
    name: "lots that may be parted",

    divided: true,
    cases: tractable(parted, true, 300, 30, 30_000),
  },
  {
    name: "lots kept whole, seen good, of another ripeness, cut, moved or wrapped anew",
    divided: false,
    cases: tractable(whole, false, 700, 30, 40_000, seenOtherwise),
  },
  {
    name: "lots that may be parted, seen good, of another ripeness, cut, moved or wrapped anew",
    divided: true,
    cases: tractable(parted, true, 300, 15, 50_000, seenOtherwise),
  },
];

let solver: Highs;
beforeAll(async () => {
  solver = await loadSolver();
});

describe.each(groups)("the bound on plans carried on, $name", ({ name, divided, cases }) => {
  const gaps: number[] = [];
  const tally = new Tally();
  afterAll(() => {
    const middle = gaps.sort((a, b) => a - b)[Math.floor(gaps.length / 2)] ?? 0;
    console.info(`${name}: ${tally}; gap to the bound in the middle ${(100 * middle).toFixed(1)} %`);
  });

  it.each(cases)(
    "is above neither the best of all choices nor the plan, though it knows of no plan (seed $seed)",
    ({ plan, problem }) => {
      const { total } = bestOfAll(problem, waysOf(problem, divided));
      const unaware = { mostRelaxations: 12, value: Number.POSITIVE_INFINITY };
      const { bound } = boundOf(solver, prepare(problem), unaware);
      const value = plan.objective.total;
      tally.add(value / total - 1);
      gaps.push(value > 0 ? Math.max(0, 1 - bound / value) : 0);
      expect(bound).toBeLessThanOrEqual(Math.min(total, value) * (1 + 1e-9) + 1e-9);
    },
  );
});

describe("the bound on plans too large to try every choice, carried on", () => {
  it.each(Array.from({ length: 12 }, (_, index) => 500 + index))(
    "is above nothing and not above what the planner finds (seed %i)",
    (seed) => {
      const { plan, problem } = carriedOn(seed, larger);
      const { total } = plan.objective;
      const { bound } = boundOf(solver, prepare(problem), {
        mostRelaxations: 6,
        value: Number.POSITIVE_INFINITY,
      });
      expect(bound).toBeGreaterThan(0);
      expect(bound).toBeLessThanOrEqual(total * (1 + 1e-9));
      const proof = provePlan(problem, total, solver, { mostRelaxations: 2 });
      expect(proof.gap).toBeCloseTo((proof.value - proof.bound) / proof.value, 12);
    },
  );
});
