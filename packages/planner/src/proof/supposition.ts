import type { AllowedVents } from "./kitchenBoxes.js";

/**
 * What a branch of the proof supposes about vents and air. The branches together leave nothing out: where one supposes the least ethylene of a box in a window
 * at or above a level, another supposes it at or below.
 */
export interface Supposition {
  readonly vents: AllowedVents;
  /** Ethylene [µL/L] of each box, by window: never below this in the window. */
  readonly leastEthylene: readonly Float64Array[];
  /** By window: at some time in the window not above this; last, the same at some time at all. */
  readonly leastAtMost: readonly Float64Array[];
  /** Vapour density [kg/m³] of each box: never above this. */
  readonly mostDensity: Float64Array;
  /** At some time not below this. */
  readonly mostAtLeast: Float64Array;
}

/** Whether a supposition cannot hold whatever lies in the boxes. */
export const contradicts = ({ leastEthylene, leastAtMost, mostDensity, mostAtLeast }: Supposition): boolean =>
  leastEthylene.some((least, window) => least.some((level, box) => level > leastAtMost[window]![box]!)) ||
  leastAtMost.at(-1)!.some((most, box) => leastEthylene.every((least) => least[box]! > most)) ||
  mostAtLeast.some((level, box) => level > mostDensity[box]!);
