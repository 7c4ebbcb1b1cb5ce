import { endingProgress } from "../produce/ending.js";
import { type Ending, endings } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";

export interface End {
  readonly day: number;
  readonly endedBy: Ending;
}

/**
 * Where a lot ends when every dose is carried on from `day` at constant rates: the earliest ending by straight line, before `day`
 * where the lot has passed it already. Infinity (named "senescence") where nothing advances.
 *
 * @param scratch two arrays of one entry an ending
 */
export function carryOn(
  produce: Produce,
  state: Float64Array,
  rates: Float64Array,
  day: number,
  scratch: readonly [Float64Array, Float64Array],
): End {
  const [now, later] = scratch;
  endingProgress(produce, state, now);
  endingProgress(
    produce,
    state.map((value, entry) => value + probe * rates[entry]!),
    later,
  );
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

export const carryOnScratch = (): [Float64Array, Float64Array] => [
  new Float64Array(endings.length),
  new Float64Array(endings.length),
];
