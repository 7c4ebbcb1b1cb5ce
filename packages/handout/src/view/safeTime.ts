import type { Plan, PlannedLot } from "@keepwright/planner";
import { isCold } from "./coldPlaces.js";
import type { HandoutContext } from "./context.js";

/** Whether its safe time was over before the plan began: it is thrown away, and has no place, no move and no meal. */
export const isPast = ({ safeUntil }: PlannedLot): boolean => safeUntil === "past";

/** Warmest refrigerator that keeps cut produce [°C], where the catalogue names none: FDA Food Code 3-501.16, from memory. */
const usualColdHolding = 5;

/** Whether it may be kept for hours only: what is cut and under a limit, in a place warmer than cold holding. */
export function isForHours({ catalogue }: HandoutContext, plan: Plan, lot: PlannedLot): boolean {
  if (lot.safeUntil !== plan.from || lot.life.late >= 1) return false;
  const place = plan.places.find((one) => one.place === lot.stays[0]?.place);
  const limit = catalogue.safety.get("controlled-cold-holding-at-most")?.value ?? usualColdHolding;
  return place !== undefined && (!isCold(place) || place.temperature > limit);
}
