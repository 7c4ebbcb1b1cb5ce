import type { Catalogue } from "@keepwright/catalogue";
import { type CalendarDate, calendarDate } from "@keepwright/quantities";
import { type BoundStanding, bindStanding } from "./bindCarried.js";
import { type BoundLot, bindHaul } from "./bindHaul.js";
import { type BoundKitchen, bindKitchen } from "./bindKitchen.js";
import { haulFrom } from "./checkHaul.js";
import { householdFrom } from "./checkHousehold.js";
import { kitchenFrom } from "./checkKitchen.js";
import { HaulError } from "./inputError.js";
import type { Household, Kitchen } from "./kitchen.js";
import { wishFindings } from "./wish.js";

/** What is asked of the planner, before anything has been checked. */
export interface PlanRequest {
  readonly haul: unknown;
  readonly kitchen: unknown;
  /** Who eats; usual numbers when left out. */
  readonly household?: unknown;
  /** First day, year-month-day. */
  readonly from: string;
  readonly seed?: number;
  readonly catalogue: Catalogue;
}

/** A checked request bound to the model: everything the search, the schedule and the explanations read. */
export interface Problem extends BoundKitchen {
  readonly kitchen: Kitchen;
  readonly household: Household;
  readonly from: CalendarDate;
  readonly seed: number;
  readonly catalogue: Catalogue;
  readonly lots: readonly BoundLot[];
  /** How the kitchen stands, where an earlier plan is carried on. */
  readonly standing?: BoundStanding | undefined;
}

/** Checks the request and binds it. Throws KitchenError, HaulError, HouseholdError, or RangeError for the date. */
export function bindProblem(request: PlanRequest): Problem {
  const kitchen = kitchenFrom(request.kitchen);
  const haul = haulFrom(request.haul, request.catalogue);
  const bound = bindKitchen(kitchen);
  const household = householdFrom(request.household);
  const from = calendarDate(request.from);
  const unheard = haul.lots.flatMap((lot) => wishFindings(lot, from));
  if (unheard.length > 0) throw new HaulError(unheard);
  return {
    ...bound,
    kitchen,
    household,
    from,
    seed: request.seed ?? 1,
    catalogue: request.catalogue,
    lots: bindHaul(haul, request.catalogue, bound, from),
    standing: bindStanding(bound, haul),
  };
}
