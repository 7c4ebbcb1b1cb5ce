import { type Fate, fateOfAll, fatesTogether, worthOf } from "../buying/fate.js";
import { objectiveLess, termByTerm } from "../problem/objective.js";
import type { Objective } from "../problem/plan.js";
import type { PlanRequest } from "../problem/problem.js";
import { changesFor } from "./changes/index.js";
import { type Followed, followed, wasteFollowed } from "./followed.js";
import { gainOf, mean } from "./gain.js";
import type { Change, Improvement, Improvements } from "./improvement.js";
import { lotsToLeave } from "./lotsToLeave.js";
import { nextToNothing } from "./nextToNothing.js";
import { planned } from "./planned.js";
import { type SeededPlans, seededPlans } from "./seededPlans.js";
import { shoppingTwice } from "./shoppingTwice.js";
import { type CheckedRequest, checkedRequest } from "./triedChange.js";

/** Each term of some objectives, put together. */
const meanObjective = (objectives: readonly Objective[]): Objective =>
  termByTerm((name) => mean(objectives.map((one) => one[name])));

/** A change, how it is planned with a seed, and the plans made so, one for each of the first seeds. */
interface Tried {
  readonly change: Change;
  readonly withSeed: (seed: number) => Followed;
  readonly plans: readonly Followed[];
}

const fateOf = ({ plans }: Followed): Fate => fatesTogether(plans.map(fateOfAll));

/** Grams that are no longer eaten at their best, plan against plan of the same seed. */
const eatenLess = (base: SeededPlans, plans: readonly Followed[]): number =>
  mean(plans.map((one, index) => fateOf(base.plans[index]!).eaten - fateOf(one).eaten));

/** What a change is worth, and whether it counts. */
function improvementOf(base: SeededPlans, { change, plans }: Tried): Improvement {
  const told = gainOf(base.plans, base.noise, plans);
  const lost = change.name === "lot fewer" ? eatenLess(base, plans) : undefined;
  const worthBuying = lost !== undefined && worthOf({ eaten: lost, wasted: told.gain.value, left: 0 }) > 0;
  return {
    change,
    ...told,
    ...(lost !== undefined && { eatenLess: { value: lost, unit: "g" } }),
    saved: meanObjective(
      plans.map(({ objective }, index) => objectiveLess(base.plans[index]!.objective, objective)),
    ),
    matters: told.gain.value >= nextToNothing && told.gain.low > 0 && !worthBuying,
    seeds: base.seeds.slice(0, plans.length),
  };
}

const byGain = (one: Improvement, other: Improvement): number => other.gain.value - one.gain.value;

/** Of some ways to leave a lot unbought the one after which what is left is worth most: it is a choice among them, not so many changes. */
function bestLot(tried: readonly Tried[]): Tried | undefined {
  const worth = ({ plans }: Tried): number => worthOf(fateOf(plans[0]!));
  return tried.reduce<Tried | undefined>(
    (best, one) => (best === undefined || worth(one) > worth(best) ? one : best),
    undefined,
  );
}

/** What seems to matter with one seed is planned with the others too: of many changes tried once, some would seem to by chance. */
function confirmed(base: SeededPlans, tried: Tried): Improvement {
  const first = improvementOf(base, tried);
  if (!first.matters) return first;
  return improvementOf(base, {
    ...tried,
    plans: [...tried.plans, ...base.seeds.slice(1).map(tried.withSeed)],
  });
}

type Untried = Omit<Tried, "plans">;

/** Every change there is to try, and what it is planned with. */
function toTry(request: CheckedRequest, base: SeededPlans): Untried[] {
  const plain = base.plans[0]!.plans[0]!;
  const leave = lotsToLeave(plain);
  const oneShop = changesFor(request)
    .filter(({ change }) => change.name !== "lot fewer" || leave.has(change.lot.id))
    .map((tried) => ({
      change: tried.change,
      withSeed: (seed: number) => followed([planned(tried.request, seed)]),
    }));
  return [...oneShop, ...shoppingTwice(request, plain)];
}

const isLotFewer = ({ change }: Untried): boolean => change.name === "lot fewer";

/** What is known before any change has been tried. */
function withNothingTried(base: SeededPlans): Improvements {
  const { plan } = base.plans[0]!.plans[0]!;
  return {
    version: 1,
    from: plan.from,
    days: plan.days,
    kitchen: plan.kitchen,
    household: plan.household,
    expectedWaste: { value: mean(base.plans.map(wasteFollowed)), unit: "g" },
    objective: meanObjective(base.plans.map(({ objective }) => objective)),
    rule: { leastGain: nextToNothing, seeds: [...base.seeds], plannerNoise: base.noise },
    changes: [],
    cautions: plan.cautions,
  };
}

/** How far the search for improvements has come. */
export interface ImproveStep {
  /** What is found so far, in the shape and order of the whole; each change is as it stays. */
  readonly improvements: Improvements;
  /** Changes tried so far, and how many there are to try: a lot fewer counts for each lot. */
  readonly tried: number;
  readonly of: number;
}

/**
 * What would help most, told bit by bit: first how it is with nothing changed, then after every change tried what is found so far. The last step is
 * the whole, which is what `improve` gives. Throws as `improve` does.
 */
export function* improving(asked: PlanRequest): Generator<ImproveStep, void> {
  const request = checkedRequest(asked);
  const base = seededPlans(request);
  const first = withNothingTried(base);
  const hopeless = Math.max(...base.plans.map(wasteFollowed)) < nextToNothing;
  const untried = hopeless ? [] : toTry(request, base);
  const found: Improvement[] = [];
  const step = (tried: number): ImproveStep => ({
    improvements: { ...first, changes: [...found].sort(byGain) },
    tried,
    of: untried.length,
  });
  yield step(0);
  const once = (one: Untried): Tried => ({ ...one, plans: [one.withSeed(base.seeds[0]!)] });
  const lots: Tried[] = [];
  const lastLot = untried.findLast(isLotFewer);
  for (const [index, one] of untried.entries()) {
    const tried = once(one);
    if (!isLotFewer(one)) found.push(confirmed(base, tried));
    else lots.push(tried);
    const lot = one === lastLot ? bestLot(lots) : undefined;
    if (lot) found.push(confirmed(base, lot));
    yield step(index + 1);
  }
}

/**
 * What would help most: one change at a time to the kitchen, the haul or the household, each planned anew with the same seed and search, ranked by
 * the expected waste it avoids.
 *
 * A change matters when it saves `nextToNothing` or more and all of its range is above nothing; a lot left unbought only where more of it would be wasted than
 * eaten, which is when `buyable` would not have it bought. Often none does. Pure and repeatable, like
 * `planHaul`, of which it makes 10 to 30. Throws KitchenError, HaulError, HouseholdError, or RangeError for a date that is none.
 */
export function improve(asked: PlanRequest): Improvements {
  let improvements: Improvements | undefined;
  for (const step of improving(asked)) improvements = step.improvements;
  return improvements!;
}
