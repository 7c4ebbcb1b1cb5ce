import { endingProgress } from "../produce/ending.js";
import { type Ending, endings, stateNames } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";
import { EndFinder } from "./endFinder.js";

/** What is kept of a lot while it is integrated. */
export interface LotRecord {
  /** NaN until it has ended. */
  endDay: number;
  endedBy: Ending;
  ripeDay: number;
  readonly stayStarts: number[];
  /** Progress of each ending at the last time looked, and a place for the next. */
  progress: Float64Array;
  nextProgress: Float64Array;
  /** The end was found by carrying on beyond the horizon. */
  beyondHorizon: boolean;
  /** Quality at each whole day, and the states there in one row, as far as asked for. */
  readonly quality: number[];
  states: Float64Array | undefined;
}

export const lotRecord = (stays: number, endingCount: number): LotRecord => ({
  endDay: Number.NaN,
  endedBy: "senescence",
  ripeDay: Number.POSITIVE_INFINITY,
  stayStarts: stays === 1 ? [0] : [0, ...new Array<number>(stays - 1).fill(Number.POSITIVE_INFINITY)],
  progress: new Float64Array(endingCount),
  nextProgress: new Float64Array(endingCount),
  beyondHorizon: false,
  quality: [],
  states: undefined,
});

/** The earliest ending reached between two times, by straight line between the progress at each; −1 when none is. */
export function firstReached(before: Float64Array, after: Float64Array): number {
  let first = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let ending = 0; ending < after.length; ending++) {
    if (after[ending]! < 1) continue;
    const share = shareReached(before[ending]!, after[ending]!);
    if (share < least) {
      least = share;
      first = ending;
    }
  }
  return first;
}

/** Share of the time between two looks at which a progress reaches 1. */
export const shareReached = (before: number, after: number): number =>
  before >= 1 ? 0 : (1 - before) / (after - before);

const finder = new EndFinder();
const before = new Float64Array(stateNames.length);

/**
 * Notes the end if the lot reached one between the days `from` and `to`; `state` is that at `to`, reached by the mean of the rates at both. It is found
 * along the parabola these make of every state: decay of ripening fruit bends too much for a straight line in a long step.
 */
export function noteProgress(
  record: LotRecord,
  produce: Produce,
  from: number,
  to: number,
  state: Float64Array,
  rates: Float64Array,
  laterRates: Float64Array,
): void {
  if (!Number.isNaN(record.endDay)) return;
  endingProgress(produce, state, record.nextProgress);
  const ending = firstReached(record.progress, record.nextProgress);
  if (ending >= 0) {
    for (let entry = 0; entry < before.length; entry++) {
      before[entry] = state[entry]! - 0.5 * (to - from) * (rates[entry]! + laterRates[entry]!);
    }
    const found = finder.find({ produce, state: before, rates, laterRates }, to - from);
    record.endDay = found ? from + found.after : to;
    record.endedBy = found?.endedBy ?? endings[ending]!;
  }
  const last = record.progress;
  record.progress = record.nextProgress;
  record.nextProgress = last;
}
