import { at as position, stateNames } from "../produce/lotState.js";
import { quality } from "../produce/quality.js";
import type { RunningLot } from "../simulate/runningLot.js";
import type { AirRanges } from "./airRanges.js";
import { furthestDay, type OptimisticCourse, rounding } from "./optimisticCourse.js";
import type { StayInRange } from "./stayInRange.js";

const { waterLost, senescence, chilling, decay, sprouting, ethyleneInjury, safety, eatingHarm } = position;

/** Days after which the first ending comes, from doses at rates that stay as they are; Infinity when none does. */
function daysToEnd(maximumLoss: number, doses: Float64Array, rates: Float64Array): number {
  let days = Number.POSITIVE_INFINITY;
  const until = (dose: number, rate: number, end: number): void => {
    if (dose >= end) days = 0;
    else if (rate > 0) days = Math.min(days, (end - dose) / rate);
  };
  until(doses[senescence]! + doses[chilling]!, rates[senescence]! + rates[chilling]!, 1);
  until(doses[waterLost]!, rates[waterLost]!, maximumLoss);
  for (const one of [decay, sprouting, ethyleneInjury, safety]) until(doses[one]!, rates[one]!, 1);
  return days;
}

/**
 * The same as following it step by step, for a lot that stays in one place and does not ripen: its rates are constant in each window of time, so that its doses are straight
 * lines. What spoils eating stops at the most it can spoil.
 */
export function steadyCourse(
  { lot, state }: RunningLot,
  stay: StayInRange,
  air: AirRanges,
  horizonDays: number,
): OptimisticCourse {
  const { produce } = lot;
  const doses = state.slice();
  const at = new Float64Array(stateNames.length);
  const rates = new Float64Array(stateNames.length);
  const ripe = state[position.ripeness]!;
  const qualities: number[] = [];
  let endDay = Number.POSITIVE_INFINITY;
  let day = 0;
  air.windows.forEach((from, window) => {
    const to = air.windows[window + 1] ?? Number.POSITIVE_INFINITY;
    stay.leastRates(doses, ripe, ripe, window, rates);
    const mostHarm = Math.max(doses[eatingHarm]!, stay.leastFullHarm);
    const advance = (days: number, out: Float64Array): void => {
      for (let entry = 0; entry < doses.length; entry++) out[entry] = doses[entry]! + days * rates[entry]!;
      out[eatingHarm] = Math.min(mostHarm, out[eatingHarm]!);
    };
    for (; day <= horizonDays && day < to; day++) {
      advance(day - from, at);
      for (let entry = 0; entry < at.length; entry++) at[entry]! *= 1 - rounding;
      qualities.push(quality(produce, at));
    }
    const after = daysToEnd(produce.maximumLoss, doses, rates);
    if (endDay === Number.POSITIVE_INFINITY && after <= to - from) endDay = from + after;
    if (to < Number.POSITIVE_INFINITY) advance(to - from, doses);
  });
  return { endDay: endDay > furthestDay ? Number.POSITIVE_INFINITY : endDay, quality: qualities };
}
