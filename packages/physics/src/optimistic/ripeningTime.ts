import { at as position } from "../produce/lotState.js";
import type { RunningLot } from "../simulate/runningLot.js";
import { type AirRanges, windowAt } from "./airRanges.js";
import type { StayInRange } from "./stayInRange.js";

/** Days [d] between which a lot becomes ripe; both 0 for what is ready as it comes, Infinity for never. */
export interface RipeningTime {
  readonly from: number;
  readonly to: number;
}

/**
 * Shares by which the stepper may be off where fruit ripens. Measured between steps of a quarter and of a fiftieth of a day, on 7,107 lots in 1,200 random hauls put anyhow: days to ripen differed by
 * at most 1.1 % and the end of ripening fruit came at most 0.8 % too late (packages/planner/test/proof/stepper.test.ts measures other hauls). Where nothing ripens the rates are constant.
 */
export const stepperError = { ripening: 0.02, end: 0.01 } as const;

/** A lot counts as ripe, and moves, this near 1 (see `isRipe`). */
export const nearlyRipe = 1 - 1e-4;

/** Steps of ripeness: in each the rate at its riper end bounds ripening from above, that at its other end from below. */
const steps = 48;

/** Days [d] beyond which nothing is told apart. */
const never = 3650;

function earliest(stay: StayInRange, ripe: number): number {
  const width = (nearlyRipe - ripe) / steps;
  let day = 0;
  for (let step = 1; step <= steps; step++) day += width / stay.fastestRipening(ripe + step * width);
  return day / (1 + stepperError.ripening);
}

function latest(stay: StayInRange, air: AirRanges, ripe: number): number {
  const width = (1 - ripe) / steps;
  let day = 0;
  for (let step = 0; step < steps && day < never; step++) {
    for (let missing = width; missing > 0 && day < never; ) {
      const window = windowAt(air, day);
      const rate = stay.slowestRipening(ripe + step * width, window) / (1 + stepperError.ripening);
      const next = air.windows[window + 1] ?? Number.POSITIVE_INFINITY;
      const length = Math.min(missing / rate, next - day);
      if (length === Number.POSITIVE_INFINITY) return length;
      missing = missing / rate <= next - day ? 0 : missing - rate * length;
      day += length;
    }
  }
  return day >= never ? Number.POSITIVE_INFINITY : day;
}

/** When a lot becomes ripe in its first stay, in air known only within bounds. What moves by the day before it is ripe is left open: 0 … Infinity. */
export function ripeningTime(lot: RunningLot, stays: readonly StayInRange[], air: AirRanges): RipeningTime {
  const ripe = lot.state[position.ripeness]!;
  if (!lot.ripens || ripe >= nearlyRipe) return { from: 0, to: 0 };
  if (stays.slice(0, -1).some(({ stay }) => Number.isFinite(stay.untilDay))) {
    return { from: 0, to: Number.POSITIVE_INFINITY };
  }
  return { from: earliest(stays[0]!, ripe), to: latest(stays[0]!, air, ripe) };
}
