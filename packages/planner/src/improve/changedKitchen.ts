import type { Kitchen } from "../problem/kitchen.js";
import type { PlanRequest } from "../problem/problem.js";
import { changesFor } from "./changes/index.js";
import type { Change } from "./improvement.js";
import { checkedRequest } from "./triedChange.js";

/**
 * The kitchen that a change makes of the one asked about; undefined where the change is none to the kitchen, or none that can be made to this
 * request. Throws KitchenError, HaulError or HouseholdError.
 */
export function changedKitchen(asked: PlanRequest, change: Change): Kitchen | undefined {
  const request = checkedRequest(asked);
  const wanted = JSON.stringify(change);
  const made = changesFor(request).find((tried) => JSON.stringify(tried.change) === wanted);
  return made && made.request.kitchen !== request.kitchen ? made.request.kitchen : undefined;
}
