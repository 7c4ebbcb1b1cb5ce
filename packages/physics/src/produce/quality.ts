import { within } from "../within.js";
import { at as index, type LotState } from "./lotState.js";
import type { Produce } from "./produce.js";

const { waterLost, senescence, chilling, ripeness, decay, sprouting, ethyleneInjury, eatingHarm, safety } =
  index;

/** Quality of fruit that is not ripe at all [1]. Inferred: edible if need be, not what it was bought for. */
export const unripeQuality = 0.2;

/** What is left of quality at a share 0…1 of a process used up: little lost early, all at the end. Shape inferred; published scores fall slowly, then fast. */
function left(used: number): number {
  return 1 - within(used, 0, 1) ** 2;
}

/** Quality by ripeness [1]: rises to ready to eat, falls to over-ripe; 1 throughout in kinds that do not ripen. */
function ripenessQuality(produce: Produce, ripe: number): number {
  if (produce.ripening === undefined) return 1;
  return ripe < 1 ? unripeQuality + (1 - unripeQuality) * Math.max(0, ripe) : left(ripe - 1);
}

/**
 * Quality 0…1 of a lot: the product of turgor, freshness (senescence with chilling), ripeness, sprouting, ethylene injury, what eating effects left, and decay.
 *
 * Each part is 1 untouched and 0 where that process alone ends the lot. Decay is counted by the square of its dose, for it cannot be tasted before
 * it shows. 0 once a safety limit is used up; before that safety does not touch it. All shapes are inferred: no publication gives one scale for all kinds.
 */
export function quality(produce: Produce, state: LotState): number {
  if (state[safety]! >= 1) return 0;
  const decayed = state[decay]!;
  return (
    left(state[waterLost]! / produce.maximumLoss) *
    left(state[senescence]! + state[chilling]!) *
    ripenessQuality(produce, state[ripeness]!) *
    left(state[sprouting]!) *
    left(state[ethyleneInjury]!) *
    left(decayed * decayed) *
    within(1 - state[eatingHarm]!, 0, 1)
  );
}
