import type { Catalogue, WrapId } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Kitchen } from "../problem/kitchen.js";

/**
 * Hard rule: wraps that can be put around a lot. Only kinds recorded as standing in water get a glass of water, and only
 * while whole; cut produce is covered. Least room first. What suits best among these is for the physics to find.
 */
export function suitableWraps(lot: BoundLot, kitchen: Kitchen, wrapsById: Catalogue["wraps"]): WrapId[] {
  const atHand = new Set<WrapId>(["none", ...kitchen.wraps]);
  if (!lot.commodity.standsInWater?.value || lot.form.cut) atHand.delete("glass of water");
  const room = (wrap: WrapId): number => wrapsById.get(wrap)?.extraRoom.value ?? 0;
  const wraps = [...atHand].sort((a, b) => room(a) - room(b));
  if (!lot.form.cut) return wraps;
  const covers = wraps.filter(isCover);
  return covers.length > 0 ? covers : wraps;
}

/**
 * Wraps that keep a cut surface from touching other food: the usual advice to cover cut produce (common practice; the
 * catalogue's safety limits cover time and temperature, not covering).
 */
export const isCover = (wrap: WrapId): boolean =>
  wrap === "closed film bag" || wrap === "lidded box" || wrap === "beeswax cloth" || wrap === "foil";
