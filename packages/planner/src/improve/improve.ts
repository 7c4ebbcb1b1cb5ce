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

/** What a change is worth, and whether it counts. */
function improvementOf(base: SeededPlans, { change, plans }: Tried): Improvement {
  const told = gainOf(base.plans, base.noise, plans);
  return {
    change,
    ...told,
    saved: meanObjective(
      plans.map(({ objective }, index) => objectiveLess(base.plans[index]!.objective, objective)),
    ),
    matters: told.gain.value >= nextToNothing && told.gain.low > 0,
    seeds: base.seeds.slice(0, plans.length),
  };
}

const byGain = (one: Improvement, other: Improvement): number => other.gain.value - one.gain.value;

/** Of the lots left unbought only the one that saves most is kept: it is a choice among them, not so many changes. */
function withBestLot(tried: readonly Tried[]): Tried[] {
  const waste = ({ plans }: Tried): number => wasteFollowed(plans[0]!);
  const lots = tried.filter(({ change }) => change.name === "lot fewer");
  const best = lots.reduce<Tried | undefined>(
    (least, one) => (least === undefined || waste(one) < waste(least) ? one : least),
    undefined,
  );
  return tried.filter((one) => one.change.name !== "lot fewer" || one === best);
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

function triedOnce(request: CheckedRequest, base: SeededPlans): Tried[] {
  const plain = base.plans[0]!.plans[0]!;
  const leave = lotsToLeave(plain);
  const oneShop = changesFor(request)
    .filter(({ change }) => change.name !== "lot fewer" || leave.has(change.lot.id))
    .map((tried) => ({
      change: tried.change,
      withSeed: (seed: number) => followed([planned(tried.request, seed)]),
    }));
  return [...oneShop, ...shoppingTwice(request, plain)].map((tried) => ({
    ...tried,
    plans: [tried.withSeed(base.seeds[0]!)],
  }));
}

/**
 * What would help most: one change at a time to the kitchen, the haul or the household, each planned anew with the same seed and search, ranked by
 * the expected waste it avoids.
 *
 * A change matters when it saves `nextToNothing` or more and all of its range is above nothing. Often none does. Pure and repeatable, like
 * `planHaul`, of which it makes 10 to 30. Throws KitchenError, HaulError, HouseholdError, or RangeError for a date that is none.
 */
export function improve(asked: PlanRequest): Improvements {
  const request = checkedRequest(asked);
  const base = seededPlans(request);
  const { plan } = base.plans[0]!.plans[0]!;
  const value = mean(base.plans.map(wasteFollowed));
  const hopeless = Math.max(...base.plans.map(wasteFollowed)) < nextToNothing;
  const tried = hopeless ? [] : withBestLot(triedOnce(request, base));
  return {
    version: 1,
    from: plan.from,
    days: plan.days,
    kitchen: plan.kitchen,
    household: plan.household,
    expectedWaste: { value, unit: "g" },
    objective: meanObjective(base.plans.map(({ objective }) => objective)),
    rule: { leastGain: nextToNothing, seeds: [...base.seeds], plannerNoise: base.noise },
    changes: tried.map((one) => confirmed(base, one)).sort(byGain),
    cautions: plan.cautions,
  };
}
