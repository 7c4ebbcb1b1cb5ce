import type { BoundLot } from "../problem/bindHaul.js";
import type { BoundPlace } from "../problem/bindKitchen.js";
import { hasSafeTime } from "./underControl.js";

/**
 * Hard rule: cut produce, and what is sold under the same control (`hasSafeTime`), goes into the refrigerator at once (the catalogue's safety limit "refrigerate-cut-within", two
 * hours at most). Where there is no refrigerator it may lie anywhere; the safety dose then ends it and the plan cautions.
 */
export function allowedPlaces(lot: BoundLot, places: readonly BoundPlace[]): readonly BoundPlace[] {
  if (hasSafeTime(lot)) return unlessNone(places, ({ cold }) => cold);
  return isKeptDry(lot) ? unlessNone(places, ({ cold }) => !cold) : places;
}

/** The places of a sort; all where there is none. */
function unlessNone(
  places: readonly BoundPlace[],
  holds: (place: BoundPlace) => boolean,
): readonly BoundPlace[] {
  const found = places.filter(holds);
  return found.length > 0 ? found : places;
}

/**
 * Declared rule: whole dry bulbs lie outside the refrigerator where there is anywhere else. The physics would keep them in its dry open air; how humid home
 * refrigerators are was never found measured, and the publication named in the catalogue (`dryOutOfRefrigerator`) calls them too humid for bulbs.
 */
export const isKeptDry = ({ commodity, form }: Pick<BoundLot, "commodity" | "form">): boolean =>
  !form.cut && commodity.dryOutOfRefrigerator !== undefined;
