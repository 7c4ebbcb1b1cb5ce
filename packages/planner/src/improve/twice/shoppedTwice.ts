import { addDays } from "@keepwright/quantities";
import { bindHaul } from "../../problem/bindHaul.js";
import type { Household } from "../../problem/kitchen.js";
import type { Lot } from "../../problem/lot.js";
import { objectiveLess, termByTerm } from "../../problem/objective.js";
import { bindProblem, type Problem } from "../../problem/problem.js";
import { wantedThen, wishOf } from "../../problem/wish.js";
import { eatingTerms } from "../../search/evaluate.js";
import { type Followed, followed } from "../followed.js";
import { type Planned, plannedProblem } from "../planned.js";
import type { CheckedRequest } from "../triedChange.js";
import { carriedOn } from "./carried.js";
import { daysBetween } from "./middleDay.js";

/** What comes home on each day, and when the second day is [d from the first]. */
export interface TwoShops {
  readonly day: number;
  readonly first: readonly Lot[];
  readonly second: readonly Lot[];
}

/** The same kitchen with other lots and days; the lots get ids of their own, since what is carried stands beside what is new of its kind. */
function problemWith(request: CheckedRequest, lots: readonly Lot[], household: Household): Problem {
  const named = lots.map((lot, index) => ({ ...lot, id: `lot-${index + 1}` }));
  // Days wanted of the whole haul are counted from another first day: those of the named lots are looked at instead.
  const unwished = request.haul.lots.map(({ wanted: _, ...lot }) => lot);
  const problem = bindProblem({ ...request, household, haul: { ...request.haul, lots: unwished } });
  return { ...problem, lots: bindHaul({ lots: named }, request.catalogue, problem, problem.from) };
}

/** A plan whose leftovers are another's to answer for: they take no part in its waste or in its other terms. */
function withoutLeftovers(planned: Planned): Planned {
  const { prepared, evaluation, plan } = planned;
  const { parts } = evaluation.choice;
  const terms = parts.map((part, index) => {
    const { gramsPerPortion } = prepared.problem.lots[part.lot]!;
    return eatingTerms(evaluation.costs[index]!, [], evaluation.eating.left[index]!, gramsPerPortion);
  });
  const sum = (name: keyof (typeof terms)[number]): number =>
    terms.reduce((total, one) => total + one[name], 0);
  const own = termByTerm((name) => {
    if (name === "total") return sum("waste") + sum("qualityLost") + sum("lifeLost") + sum("wishesMissed");
    return name === "effort" || name === "overflow" ? 0 : sum(name);
  });
  const eating = { ...evaluation.eating, left: parts.map(() => 0) };
  return {
    prepared,
    evaluation: { ...evaluation, eating },
    plan: { ...plan, objective: objectiveLess(plan.objective, own) },
  };
}

/**
 * Two plans, one after the other: the first for what came home on the first day, up to the day of the second shop; then one for what comes home fresh
 * that day and whatever is left of the first, carried on as it is.
 */
export function shoppedTwice(
  request: CheckedRequest,
  { day, first, second }: TwoShops,
  seed: number,
): Followed {
  const { household } = request;
  const seeded = { ...request, seed };
  const before = plannedProblem(problemWith(seeded, first, daysBetween(household, 0, day)));
  const { from: start } = before.prepared.problem;
  const from = addDays(start, day);
  const rest = [...second, ...carriedOn(before, day)].map(
    ({ wanted, ...lot }): Lot => ({ ...lot, ...wantedThen(wishOf({ wanted }, start), day) }),
  );
  const after = plannedProblem(
    problemWith({ ...seeded, from }, rest, daysBetween(household, day, household.days)),
  );
  return followed([withoutLeftovers(before), after]);
}
