import type { Catalogue, Commodity } from "@keepwright/catalogue";
import {
  type Household,
  householdSchema,
  type Kitchen,
  kitchenSchema,
  type Place,
} from "../problem/kitchen.js";
import { type Haul, haulSchema, type Lot } from "../problem/lot.js";
import { type Plan, type PlannedLot, planSchema } from "../problem/plan.js";
import type { PlanFault } from "./fault.js";

/** A plan and what it was made for, as they may come from anywhere. */
export interface CheckRequest {
  readonly plan: unknown;
  readonly haul: unknown;
  readonly kitchen: unknown;
  readonly household?: unknown;
  readonly catalogue: Catalogue;
}

/** The same, with their shapes found right. */
export interface Subject {
  readonly plan: Plan;
  readonly haul: Haul;
  readonly kitchen: Kitchen;
  readonly household: Household;
  readonly catalogue: Catalogue;
}

const schemas = { plan: planSchema, haul: haulSchema, kitchen: kitchenSchema, household: householdSchema };

/** The subject, or a fault for every figure that is missing or of the wrong kind. */
export function subjectOf(request: CheckRequest): Subject | PlanFault[] {
  const given = { ...request, household: request.household ?? {} };
  const faults: PlanFault[] = [];
  const read = <Name extends keyof typeof schemas>(name: Name): unknown => {
    const parsed = schemas[name].safeParse(given[name]);
    if (parsed.success) return parsed.data;
    for (const issue of parsed.error.issues) {
      const what = [name, ...issue.path.map(String)].join(" ");
      faults.push({ rule: "shape", what, value: issue.code, limit: issue.message, unit: "" });
    }
    return undefined;
  };
  const subject = {
    plan: read("plan") as Plan,
    haul: read("haul") as Haul,
    kitchen: read("kitchen") as Kitchen,
    household: read("household") as Household,
    catalogue: request.catalogue,
  };
  return faults.length > 0 ? faults : subject;
}

/** Look-ups that hold once the names in a plan are known to exist (see `knownThings`). */
export const lotOf = ({ haul }: Subject, part: PlannedLot): Lot =>
  haul.lots.find(({ id }) => id === part.lot)!;

export const kindOf = ({ catalogue }: Subject, part: { readonly commodity: string }): Commodity =>
  catalogue.commodities.get(part.commodity)!;

export const placeOf = ({ kitchen }: Subject, id: string): Place =>
  kitchen.places.find((place) => place.id === id)!;

export const partsOf = ({ plan }: Subject, lot: Lot): PlannedLot[] =>
  plan.lots.filter((part) => part.lot === lot.id);

/** Portions a part is made of, as the plan tells: eaten and left over. */
export const portionsOf = (part: PlannedLot): number =>
  part.leftPortions + part.eatOn.reduce((total, { portions }) => total + portions, 0);

/** Which of its stays a part is in at the start of a day. */
export const stayAt = (part: PlannedLot, day: number): PlannedLot["stays"][number] =>
  part.stays.findLast((stay) => stay.fromDay <= day) ?? part.stays[0]!;
