import type { PlanRequest } from "../problem/problem.js";
import { type Followed, followed, wasteFollowed } from "./followed.js";
import { span } from "./gain.js";
import { planned } from "./planned.js";
import type { CheckedRequest } from "./triedChange.js";

/** Seeds a request is planned with to see how far apart they lie. */
const seedsTried = 3;
const seedsInAll = 2 ** 32;

const seedsFrom = ({ seed = 1 }: PlanRequest): number[] =>
  Array.from({ length: seedsTried }, (_, index) => (seed + index) % seedsInAll);

/** One request planned with every seed: a plan for each, and how far apart their waste lies [g]. */
export interface SeededPlans {
  readonly seeds: readonly number[];
  readonly plans: readonly Followed[];
  readonly noise: number;
}

/** Plans a request with its own seed and the two after it. */
export function seededPlans(request: CheckedRequest): SeededPlans {
  const seeds = seedsFrom(request);
  const plans = seeds.map((seed) => followed([planned(request, seed)]));
  return { seeds, plans, noise: span(plans.map(wasteFollowed)) };
}
