import { endingProgress } from "../produce/ending.js";
import { type Ending, endings, stateNames } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";

export interface End {
  readonly day: number;
  readonly endedBy: Ending;
}

/**
 * Where a lot ends when every dose is carried on from `day` at constant rates: the earliest ending by straight line, before `day`
 * where the lot has passed it already. Infinity (named "senescence") where nothing advances.
 */
export function carryOn(
  produce: Produce,
  state: Float64Array,
  rates: Float64Array,
  day: number,
  { now, later, ahead }: CarryOnScratch,
): End {
  for (let entry = 0; entry < ahead.length; entry++) ahead[entry] = state[entry]! + probe * rates[entry]!;
  endingProgress(produce, state, now);
  endingProgress(produce, ahead, later);
  let earliest = Number.POSITIVE_INFINITY;
  let which = 0;
  for (let ending = 0; ending < endings.length; ending++) {
    const slope = (later[ending]! - now[ending]!) / probe;
    if (slope <= 0) continue;
    const end = day + (1 - now[ending]!) / slope;
    if (end < earliest) {
      earliest = end;
      which = ending;
    }
  }
  return { day: earliest, endedBy: endings[which]! };
}

/** Days ahead at which the slope of the progress is probed: short, so that none of its kinks lies between. */
const probe = 1e-3;

/** Room for working, so that nothing is allocated each time. */
export interface CarryOnScratch {
  readonly now: Float64Array;
  readonly later: Float64Array;
  readonly ahead: Float64Array;
}

export const carryOnScratch = (): CarryOnScratch => ({
  now: new Float64Array(endings.length),
  later: new Float64Array(endings.length),
  ahead: new Float64Array(stateNames.length),
});
