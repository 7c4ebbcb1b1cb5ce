import { addDays } from "@keepwright/quantities";
import { type CarryOnRequest, carryOn } from "../../src/carryOn/carryOn.js";
import type { CarriedOn } from "../../src/carryOn/index.js";
import { checkPlan, type PlanFault } from "../../src/check/index.js";
import type { Plan } from "../../src/problem/plan.js";
import type { PlanRequest } from "../../src/problem/problem.js";
import { planHaul } from "../../src/search/planHaul.js";

export interface Begun {
  readonly request: PlanRequest;
  readonly plan: Plan;
}

export const begin = (request: PlanRequest): Begun => ({ request, plan: planHaul(request) });

/** The plan carried on some days later. */
export const later = (
  { request, plan }: Begun,
  days: number,
  happened: object = {},
  more: Partial<CarryOnRequest> = {},
): CarriedOn =>
  carryOn({
    plan,
    haul: request.haul,
    kitchen: request.kitchen,
    catalogue: request.catalogue,
    on: addDays(plan.from, days),
    happened: { version: 1, ...happened },
    ...more,
  });

/** What the independent checker says of a plan that was carried on. */
export const faultsOf = ({ request }: Begun, { plan, haul }: CarriedOn): PlanFault[] =>
  checkPlan({ ...request, haul, household: { ...plan.household, days: plan.days }, plan });

/** A carried-on plan as one to be carried on again. */
export const again = ({ request }: Begun, { plan, haul }: CarriedOn): Begun => ({
  request: { ...request, haul },
  plan,
});

export const partOf = ({ plan }: CarriedOn, lot: string) => plan.lots.find((part) => part.lot === lot)!;
export const carriedOf = ({ haul }: CarriedOn, lot: string) =>
  haul.lots.find(({ id }) => id === lot)!.carried!;
export const changeOf = ({ changes }: CarriedOn, lot: string) => changes.find((one) => one.lot === lot)!;
