import { objectiveSum } from "../problem/objective.js";
import type { Objective } from "../problem/plan.js";
import type { Planned } from "./planned.js";

/** What is done in the planned days: one plan, or two where there are two shops. */
export interface Followed {
  readonly plans: readonly Planned[];
  /** Over all of its plans. */
  readonly objective: Objective;
}

/** One or more plans that are followed together, each for what is its own. */
export const followed = (plans: readonly Planned[]): Followed => ({
  plans,
  objective: objectiveSum(plans.map(({ plan }) => plan.objective)),
});

/** Edible grams expected to be wasted over all of its plans. */
export const wasteFollowed = ({ objective }: Followed): number => objective.waste;
