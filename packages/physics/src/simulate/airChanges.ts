import type { AirTree } from "../climate/airTree.js";
import type { DayAir } from "./dayAir.js";

/**
 * Ethylene that changed by less than this share counts as unchanged (it shifts life by at most 0.15 %, as that goes with the logarithm), and
 * so does vapour that changed by less than this share of what is missing to saturation.
 */
const sameEthylene = 1e-2;
const sameVapour = 2e-3;

/** Where air is other than it was: 1 by day and box, and 1 by box where it ever is. */
export interface AirChanges {
  readonly onDay: Uint8Array;
  readonly ever: Uint8Array;
}

export function airChanges(was: DayAir, is: DayAir, tree: AirTree): AirChanges {
  const onDay = new Uint8Array(is.density.length);
  const ever = new Uint8Array(is.width);
  for (let day = 0; day <= is.days; day++) {
    for (let box = 0; box < tree.size; box++) {
      const entry = day * is.width + box;
      const vapour = Math.abs(is.density[entry]! - was.density[entry]!);
      const ethylene = Math.abs(is.ethylene[entry]! - was.ethylene[entry]!);
      const most = sameVapour * (tree.saturationDensity[box]! - is.density[entry]!);
      if (vapour <= most && ethylene <= sameEthylene * is.ethylene[entry]!) continue;
      onDay[entry] = 1;
      ever[box] = 1;
    }
  }
  return { onDay, ever };
}
