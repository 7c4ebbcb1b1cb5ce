import type { AirTree } from "../climate/airTree.js";
import type { DayAir } from "./dayAir.js";

/**
 * Ethylene that changed by less than this share counts as unchanged (it shifts life by at most 0.15 %, as that goes with the logarithm), and
 * so does vapour that changed by less than this share of what is missing to saturation.
 */
const sameEthylene = 1e-2;
const sameVapour = 2e-3;
/** A change this many times as large matters even within a part of a day. */
const large = 10;

/** Where air is other than it was: 1 by day and box, and 1 by box where it ever is by much. */
export interface AirChanges {
  readonly onDay: Uint8Array;
  readonly ever: Uint8Array;
}

export const noChanges = (air: DayAir): AirChanges => ({
  onDay: new Uint8Array(air.density.length),
  ever: new Uint8Array(air.width),
});

/** Sets where the air of one run is other than that of another. */
export function noteAirChanges(was: DayAir, is: DayAir, tree: AirTree, { onDay, ever }: AirChanges): void {
  onDay.fill(0);
  ever.fill(0);
  for (let day = 0; day <= is.days; day++) {
    for (let box = 0; box < tree.size; box++) {
      const entry = day * is.width + box;
      const vapour = Math.abs(is.density[entry]! - was.density[entry]!);
      const ethylene = Math.abs(is.ethylene[entry]! - was.ethylene[entry]!);
      const most = sameVapour * (tree.saturationDensity[box]! - is.density[entry]!);
      const change = Math.max(vapour / most, ethylene / (sameEthylene * is.ethylene[entry]!));
      if (change > 1) onDay[entry] = 1;
      if (change > large) ever[box] = 1;
    }
  }
}
