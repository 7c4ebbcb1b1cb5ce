import { isAirtight } from "../rules/airtight.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import type { Column } from "./columns.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { LinearModel } from "./linearModel.js";
import { addPlaced, type Placed } from "./placed.js";

/** The stretch of air a column's lot lies in at the start, as a text; nothing where its wrap keeps smells in and out. */
function airAtStart({ way }: Column, kitchen: KitchenBoxes): string | undefined {
  const { place, wrap } = way.stays[0]!;
  if (isAirtight(wrap)) return undefined;
  const box = way.boxes[0]!;
  return box === kitchen.size ? `room ${place}` : `box ${box}`;
}

/**
 * Smells taken up on the first day: where a share of a giver and a share of a taker lie in one air and the shares add up to more than 1, at least what is over of the taker has
 * taken it up.
 */
export function smellRows(
  model: LinearModel,
  { problem }: Prepared,
  kitchen: KitchenBoxes,
  placed: readonly Placed[],
): void {
  const shares = new Map<number, Map<string, Placed[]>>();
  for (const one of placed) {
    const { column } = one;
    const air = airAtStart(column, kitchen);
    if (air === undefined) continue;
    const { index } = column.way.lot;
    const byAir = shares.get(index) ?? new Map<string, Placed[]>();
    shares.set(index, byAir);
    byAir.set(air, [...(byAir.get(air) ?? []), one]);
  }
  const ofKind = (id: string) => problem.lots.filter(({ commodity }) => commodity.id === id);
  const taken = new Map<number, number>();
  for (const { giver, taker } of problem.catalogue.odours) {
    for (const to of ofKind(taker)) {
      for (const from of ofKind(giver)) {
        if (from === to) continue;
        for (const [air, ofTaker] of shares.get(to.index) ?? []) {
          const ofGiver = shares.get(from.index)?.get(air);
          if (!ofGiver) continue;
          const column = taken.get(to.index) ?? model.column(to.grams * weights.smellTaken, 1);
          taken.set(to.index, column);
          const row = model.row(Number.NEGATIVE_INFINITY, 1, [[column, -1]]);
          for (const one of [...ofGiver, ...ofTaker]) addPlaced(row, one, 1 / one.column.way.lot.portions);
        }
      }
    }
  }
}
