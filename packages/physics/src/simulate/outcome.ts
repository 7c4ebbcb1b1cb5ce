import type { RunningLot } from "./runningLot.js";
import type { LotOutcome } from "./simulation.js";

/** What became of a lot that was run to the horizon, and carried on beyond it to its end. */
export function lotOutcome({ record }: RunningLot): LotOutcome {
  return {
    endDay: record.endDay,
    endedBy: record.endedBy,
    beyondHorizon: record.beyondHorizon,
    ripeDay: record.ripeDay,
    stayStarts: record.stayStarts,
    daily: record.daily,
    quality: record.quality,
  };
}
