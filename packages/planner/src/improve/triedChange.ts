import { haulFrom } from "../problem/checkHaul.js";
import { householdFrom } from "../problem/checkHousehold.js";
import { kitchenFrom } from "../problem/checkKitchen.js";
import type { Household, Kitchen } from "../problem/kitchen.js";
import type { Haul } from "../problem/lot.js";
import type { PlanRequest } from "../problem/problem.js";
import type { Change } from "./improvement.js";

/** A request whose haul, kitchen and household have been checked, usual numbers filled in. */
export interface CheckedRequest extends PlanRequest {
  readonly haul: Haul;
  readonly kitchen: Kitchen;
  readonly household: Household;
}

/** A change, and the request with nothing else changed. */
export interface TriedChange {
  readonly change: Change;
  readonly request: CheckedRequest;
}

/** One kind of change: every way in which it can be made to a request; none where there is nothing to change. */
export type ChangesFor = (request: CheckedRequest) => readonly TriedChange[];

/** Checks a request. Throws KitchenError, HaulError or HouseholdError. */
export const checkedRequest = (request: PlanRequest): CheckedRequest => ({
  ...request,
  kitchen: kitchenFrom(request.kitchen),
  haul: haulFrom(request.haul, request.catalogue),
  household: householdFrom(request.household),
});
