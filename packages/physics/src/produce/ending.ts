import { type Ending, endings, at as index, type LotState } from "./lotState.js";
import type { Produce } from "./produce.js";

const { waterLost, senescence, chilling, ripeness, decay, sprouting, ethyleneInjury, safety } = index;

/**
 * Progress of each ending, 0 … 1 where it ends the lot, into `out` in the order of `endings`.
 *
 * Senescence `a` and chilling `h` end it together at a + h = 1 (Tijskens & Polderdijk 1996: rates add up), named after the larger. So that both
 * rise without jumps, each is itself plus the smaller of the two: the larger reaches a + h, the other stays behind.
 * Over-ripeness: ripeness over 2, in kinds that ripen; 0 in the others.
 */
export function endingProgress(produce: Produce, state: LotState, out: Float64Array): void {
  const aged = state[senescence]!;
  const chilled = state[chilling]!;
  const shared = Math.min(aged, chilled);
  out[0] = aged + shared;
  out[1] = state[waterLost]! / produce.maximumLoss;
  out[2] = chilled + shared;
  out[3] = state[decay]!;
  out[4] = produce.ripening === undefined ? 0 : state[ripeness]! / 2;
  out[5] = state[sprouting]!;
  out[6] = state[ethyleneInjury]!;
  out[7] = state[safety]!;
}

/** The ending furthest on, from the progress that `endingProgress` wrote; the earlier in the order of `endings` when two are level. */
export function furthestEnding(progress: Float64Array): Ending {
  let furthest = 0;
  for (let which = 1; which < endings.length; which++) {
    if (progress[which]! > progress[furthest]!) furthest = which;
  }
  return endings[furthest]!;
}
