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

/** From one day to another air that itself changed by less than this share does the same to a lot as long as what changed in it is the same. */
const sameLevel = 0.1;

/**
 * Where air is other than it was: 1 by day and box, and 1 by box where it ever is by much. `turned`: 1 by day and box where it is so in another way than on
 * the days before.
 */
export interface AirChanges {
  readonly onDay: Uint8Array;
  readonly turned: Uint8Array;
  readonly ever: Uint8Array;
}

export const noChanges = (air: DayAir): AirChanges => ({
  onDay: new Uint8Array(air.density.length),
  turned: new Uint8Array(air.density.length),
  ever: new Uint8Array(air.width),
});

/** Sets where the air of one run is other than that of another. */
export function noteAirChanges(was: DayAir, is: DayAir, tree: AirTree, changes: AirChanges): void {
  const { onDay, ever, turned } = changes;
  onDay.fill(0);
  ever.fill(0);
  turned.fill(0);
  for (let box = 0; box < tree.size; box++) {
    let since = box;
    for (let entry = box; entry < onDay.length; entry += is.width) {
      const vapour = Math.abs(is.density[entry]! - was.density[entry]!);
      const ethylene = Math.abs(is.ethylene[entry]! - was.ethylene[entry]!);
      const most = sameVapour * (tree.saturationDensity[box]! - is.density[entry]!);
      const change = Math.max(vapour / most, ethylene / (sameEthylene * is.ethylene[entry]!));
      if (change > 1) onDay[entry] = 1;
      if (change > large) ever[box] = 1;
      if (change > 1 && turns(was, is, since, entry, most)) {
        turned[entry] = 1;
        since = entry;
      }
    }
  }
}

/** Whether air is changed in another way at an entry than at an earlier one of the same box. `most`: vapour that counts as the same [kg/m³]. */
function turns(was: DayAir, is: DayAir, earlier: number, entry: number, most: number): boolean {
  if (earlier === entry) return true;
  const added = is.density[entry]! - was.density[entry]! - is.density[earlier]! + was.density[earlier]!;
  const ratio =
    (is.ethylene[entry]! * was.ethylene[earlier]!) / (was.ethylene[entry]! * is.ethylene[earlier]!);
  const level = is.ethylene[entry]! / is.ethylene[earlier]!;
  const vapourLevel = Math.abs(is.density[entry]! - is.density[earlier]!);
  return (
    Math.abs(added) > most ||
    Math.abs(ratio - 1) > sameEthylene ||
    Math.abs(level - 1) > sameLevel ||
    vapourLevel > (sameLevel / sameVapour) * most
  );
}
