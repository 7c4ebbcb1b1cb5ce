import { objectiveLess, termByTerm } from "../problem/objective.js";
import type { Objective } from "../problem/plan.js";
import type { PlanRequest } from "../problem/problem.js";
import { changesFor } from "./changes/index.js";
import type { Improvement, Improvements } from "./improvement.js";
import { lotsToLeave } from "./lotsToLeave.js";
import { modelReach } from "./modelReach.js";
import { nextToNothing } from "./nextToNothing.js";
import { type Planned, planned, wasteOf } from "./planned.js";
import { type CheckedRequest, checkedRequest, type TriedChange } from "./triedChange.js";

/** Seeds a request is planned with to see how far apart they lie. */
const seedsTried = 3;
const seedsInAll = 2 ** 32;

const seedsFrom = ({ seed = 1 }: PlanRequest): number[] =>
  Array.from({ length: seedsTried }, (_, index) => (seed + index) % seedsInAll);

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** Each term of some objectives, put together. */
const meanObjective = (objectives: readonly Objective[]): Objective =>
  termByTerm((name) => mean(objectives.map((one) => one[name])));

/** The unchanged request planned with every seed. */
interface Base {
  readonly seeds: readonly number[];
  readonly plans: readonly Planned[];
  readonly noise: number;
}

function baseOf(request: CheckedRequest): Base {
  const seeds = seedsFrom(request);
  const plans = seeds.map((seed) => planned(request, seed));
  return { seeds, plans, noise: span(plans.map(wasteOf)) };
}

/** A change with the plans made for it, one for each of the first seeds. */
interface Tried extends TriedChange {
  readonly plans: readonly Planned[];
}

/**
 * What a change is worth, plan against plan of the same seed. The planner's noise is how far apart the unchanged plans lie, or the gains themselves
 * where they lie further; the model's reach is added to it as independent, for a range that holds 80 %.
 */
function improvementOf(base: Base, { change, plans }: Tried): Improvement {
  const gains = plans.map((plan, index) => wasteOf(base.plans[index]!) - wasteOf(plan));
  const value = mean(gains);
  const plannerNoise = Math.max(base.noise, span(gains));
  const model = modelReach(base.plans[0]!, plans[0]!);
  const low = value - Math.hypot(plannerNoise, model.below);
  return {
    change,
    gain: { value, low, high: value + Math.hypot(plannerNoise, model.above), unit: "g" },
    plannerNoise,
    modelReach: model,
    saved: meanObjective(
      plans.map(({ plan }, index) => objectiveLess(base.plans[index]!.plan.objective, plan.objective)),
    ),
    matters: value >= nextToNothing && low > 0,
    seeds: base.seeds.slice(0, plans.length),
  };
}

const byGain = (one: Improvement, other: Improvement): number => other.gain.value - one.gain.value;

/** Of the lots left unbought only the one that saves most is kept: it is a choice among them, not so many changes. */
function withBestLot(tried: readonly Tried[]): Tried[] {
  const waste = ({ plans }: Tried): number => wasteOf(plans[0]!);
  const lots = tried.filter(({ change }) => change.name === "lot fewer");
  const best = lots.reduce<Tried | undefined>(
    (least, one) => (least === undefined || waste(one) < waste(least) ? one : least),
    undefined,
  );
  return tried.filter((one) => one.change.name !== "lot fewer" || one === best);
}

/** What seems to matter with one seed is planned with the others too: of many changes tried once, some would seem to by chance. */
function confirmed(base: Base, tried: Tried): Improvement {
  const first = improvementOf(base, tried);
  if (!first.matters) return first;
  const more = base.seeds.slice(1).map((seed) => planned(tried.request, seed));
  return improvementOf(base, { ...tried, plans: [...tried.plans, ...more] });
}

function triedOnce(request: CheckedRequest, base: Base): Tried[] {
  const leave = lotsToLeave(base.plans[0]!);
  return changesFor(request)
    .filter(({ change }) => change.name !== "lot fewer" || leave.has(change.lot.id))
    .map((tried) => ({ ...tried, plans: [planned(tried.request, base.seeds[0]!)] }));
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
  const base = baseOf(request);
  const { plan } = base.plans[0]!;
  const value = mean(base.plans.map(wasteOf));
  const hopeless = Math.max(...base.plans.map(wasteOf)) < nextToNothing;
  const tried = hopeless ? [] : withBestLot(triedOnce(request, base));
  return {
    version: 1,
    from: plan.from,
    days: plan.days,
    kitchen: plan.kitchen,
    household: plan.household,
    expectedWaste: { value, unit: "g" },
    objective: meanObjective(base.plans.map((one) => one.plan.objective)),
    rule: { leastGain: nextToNothing, seeds: [...base.seeds], plannerNoise: base.noise },
    changes: tried.map((one) => confirmed(base, one)).sort(byGain),
    cautions: plan.cautions,
  };
}
