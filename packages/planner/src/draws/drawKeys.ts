import type { BoundLot } from "../problem/bindHaul.js";

/** What a lot is, apart from its name in the haul and what may be done to it: its kind, and how much of it came how. */
const likeness = ({ commodity, grams, form, ripeness, lot }: BoundLot): string =>
  `${commodity.id} ${form.cut ? "cut" : "whole"} ${grams} ${lot.pieces ?? ""} ${ripeness} ${lot.extraDays}`;

/**
 * The key of each lot that its draws belong to: what the lot is and, of several alike, which of them by their names. It depends neither on the order of
 * the haul nor on what else is in it.
 */
export function drawKeys(lots: readonly BoundLot[]): string[] {
  return lots.map((lot) => {
    const like = likeness(lot);
    const before = lots.filter((other) => other.lot.id < lot.lot.id && likeness(other) === like);
    return `${like} ${before.length}`;
  });
}
