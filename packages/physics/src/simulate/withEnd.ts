import type { LotOutcome } from "./simulation.js";

/**
 * The same outcome with another end [d]. Every field is named: spreading a recorded outcome would silently leave out the states of its days, which it gives only when asked. They are asked for here when somebody asks.
 */
export const withEnd = (outcome: LotOutcome, endDay: number): LotOutcome => ({
  endDay,
  endedBy: outcome.endedBy,
  beyondHorizon: outcome.beyondHorizon,
  ripeDay: outcome.ripeDay,
  stayStarts: outcome.stayStarts,
  get daily() {
    return outcome.daily;
  },
  quality: outcome.quality,
});
