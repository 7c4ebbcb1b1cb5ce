import type { TemperatureTable } from "../produce/parts.js";
import { within } from "../within.js";

/**
 * Rate of chilling injury [1/d] against the deficit below the lowest safe temperature [K]: straight lines from 0 at no deficit
 * through the published points, the last line carried on below the coldest.
 */
export interface ChillingCurve {
  readonly deficits: readonly number[];
  readonly rates: readonly number[];
}

/**
 * The curve from published days to injury [d] at temperatures [°C] and the lowest safe temperature [°C] they belong to.
 *
 * Throws RangeError when a point does not lie below the threshold.
 * Source of the form: inferred; the published tables give a threshold and seldom more than one time, which a straight line
 * through both needs least of. Kept as a dose because injury shows after warming (Handbook 66, chilling injury).
 */
export function chillingCurve(threshold: number, injury: TemperatureTable): ChillingCurve {
  const deficits = [0];
  const rates = [0];
  for (let point = injury.temperatures.length - 1; point >= 0; point--) {
    const temperature = injury.temperatures[point]!;
    if (temperature >= threshold) {
      throw new RangeError(
        `Chilling injury at ${temperature} °C does not lie below the lowest safe temperature of ${threshold} °C. Correct one of them.`,
      );
    }
    deficits.push(threshold - temperature);
    rates.push(1 / injury.values[point]!);
  }
  return { deficits, rates };
}

/** Rate of chilling injury [1/d] at a deficit below the lowest safe temperature [K]; 0 at and above it (deficit ≤ 0). */
export function chillingRate({ deficits, rates }: ChillingCurve, deficit: number): number {
  if (deficit <= 0 || deficits.length < 2) return 0;
  let upper = 1;
  while (upper < deficits.length - 1 && deficits[upper]! < deficit) upper++;
  const from = deficits[upper - 1]!;
  const share = (deficit - from) / (deficits[upper]! - from);
  const rate = rates[upper - 1]! + share * (rates[upper]! - rates[upper - 1]!);
  return Math.max(0, rate);
}

/** Ripeness from which a fruit begins to bear colder air. Inferred: it has to be past turning (0.5), well on its way to ripe (1). */
const ripenessBearingCold = 0.75;

/**
 * How far the lowest safe temperature has moved from the unripe to the ripe value, 0…1, at a ripeness (0 unripe … 2 over-ripe).
 *
 * Source: ripe tomatoes and avocados bear colder air than unripe ones (Handbook 66, chapters on both). That it moves late is inferred: half-ripe
 * fruit is stored at the unripe fruit's temperature (bananas with green tips at 13 °C), and the error is on the safe side.
 */
export const ripeThresholdShare = (ripeness: number): number =>
  within((ripeness - ripenessBearingCold) / (1 - ripenessBearingCold), 0, 1);

/** Lowest safe temperature [°C] at a ripeness, from the unripe and the ripe value. See `ripeThresholdShare`. */
export const chillingThreshold = (unripe: number, ripe: number, ripeness: number): number =>
  unripe + (ripe - unripe) * ripeThresholdShare(ripeness);
