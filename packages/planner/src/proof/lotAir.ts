import type { AirRanges } from "@keepwright/physics";
import type { Way } from "./ways.js";

/** The air that a lot is followed in. */
export interface LotAir extends AirRanges {
  /** Ethylene of every box at the most [µL/L], that of the lot's own other parts among it. */
  readonly mostWithItsParts: Float64Array;
}

/** The air that a way's lot is followed in: for what is split, other parts of the lot, perhaps riper, may lie beside it. */
export const airOf = ({ apart }: Pick<Way, "apart">, air: LotAir): AirRanges =>
  apart ? { ...air, mostEthylene: air.mostWithItsParts } : air;
