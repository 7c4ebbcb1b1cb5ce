import type { Catalogue, Commodity, WrapId } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Kitchen, PlaceKind } from "../problem/kitchen.js";
import { isAirtight } from "./airtight.js";
import { hasSafeTime } from "./underControl.js";

/**
 * Hard rule: wraps that can be put around a lot. Only kinds recorded as standing in water get a glass of water, and only
 * while whole; cut produce, and what is sold under the same control, is covered; what must breathe is not shut in. Least room first. What suits best among these is
 * for the physics to find.
 */
export function suitableWraps(lot: BoundLot, kitchen: Kitchen, wrapsById: Catalogue["wraps"]): WrapId[] {
  const atHand = new Set<WrapId>(["none", ...kitchen.wraps]);
  if (!lot.commodity.standsInWater?.value || lot.form.cut) atHand.delete("glass of water");
  const room = (wrap: WrapId): number => wrapsById.get(wrap)?.extraRoom.value ?? 0;
  const wraps = [...atHand].sort((a, b) => room(a) - room(b));
  const damp = takesDamp(lot.commodity);
  const breathes = mustBreathe(lot.commodity);
  if (!hasSafeTime(lot))
    return wraps.filter((wrap) => (damp || wrap !== "damp towel") && !(breathes && isAirtight(wrap)));
  const covers = wraps.filter(isCover);
  return covers.length > 0 ? covers : wraps;
}

/** Whether a wrap can be had in a place: a glass of water does not stand in a drawer that is pulled out and pushed in. Common practice, no source. */
export const standsThere = (wrap: WrapId, kind: PlaceKind): boolean =>
  wrap !== "glass of water" || kind !== "crisper drawer";

/**
 * Whole produce that is not shut in a closed bag, a lidded box or foil. Common practice, no source; the physics knows neither oxygen nor
 * carbon dioxide, so it cannot find it: fruit that is to ripen runs short of oxygen and spoils; bulbs, tubers and roots stored in the
 * dry are told to be taken out of any sealed bag (the catalogue's preparation of that name).
 */
export const mustBreathe = (commodity: Commodity): boolean =>
  commodity.ripening !== undefined ||
  commodity.preparation.some((step) => step.do === "remove from sealed bag");

const dampOrgans: readonly Commodity["organ"][] = ["leaf", "head", "stem", "flower", "herb", "root"];

/**
 * Whole produce that a damp towel is told for: leaves, heads, stems, flowers, herbs and roots, none of them told to be kept dry. Common practice, no source: the physics
 * speeds rot on wet skin, but its size there is common practice too, so fruit and tubers are not left to it.
 */
export const takesDamp = (commodity: Commodity): boolean =>
  dampOrgans.includes(commodity.organ) &&
  !commodity.preparation.some(
    (step) => step.do === "keep dry and unwashed" || step.do === "remove from sealed bag",
  );

/**
 * Wraps that keep a cut surface from touching other food: the usual advice to cover cut produce (common practice; the
 * catalogue's safety limits cover time and temperature, not covering).
 */
export const isCover = (wrap: WrapId): boolean =>
  wrap === "closed film bag" || wrap === "lidded box" || wrap === "beeswax cloth" || wrap === "foil";
