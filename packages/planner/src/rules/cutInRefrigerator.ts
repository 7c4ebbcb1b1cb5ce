import type { BoundLot } from "../problem/bindHaul.js";
import type { BoundPlace } from "../problem/bindKitchen.js";
import { hasSafeTime } from "./underControl.js";

/**
 * Hard rule: cut produce, and what is sold under the same control (`hasSafeTime`), goes into the refrigerator at once (the catalogue's safety limit "refrigerate-cut-within", two
 * hours at most). Where there is no refrigerator it may lie anywhere; the safety dose then ends it and the plan cautions.
 */
export function allowedPlaces(lot: BoundLot, places: readonly BoundPlace[]): readonly BoundPlace[] {
  if (!hasSafeTime(lot)) return places;
  const cold = places.filter((place) => place.cold);
  return cold.length > 0 ? cold : places;
}
