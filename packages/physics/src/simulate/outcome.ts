import { quality } from "../produce/quality.js";
import { carryOn, carryOnScratch } from "./carryOn.js";
import type { RunningLot } from "./runningLot.js";
import type { LotOutcome } from "./simulation.js";

/** What became of a lot that was run to the horizon. */
export function lotOutcome({ record, lot }: RunningLot): LotOutcome {
  const within = !Number.isNaN(record.endDay);
  const end = within
    ? { day: record.endDay, endedBy: record.endedBy }
    : carryOn(lot.produce, record.endState!, record.endRates!, record.endSeen, carryOnScratch());
  return {
    endDay: end.day,
    endedBy: end.endedBy,
    beyondHorizon: !within,
    ripeDay: record.ripeDay,
    stayStarts: record.stayStarts,
    daily: record.daily,
    quality: record.daily.map((state) => quality(lot.produce, state)),
  };
}
