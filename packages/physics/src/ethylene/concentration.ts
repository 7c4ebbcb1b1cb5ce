import { within } from "../within.js";

/**
 * Ethylene [µL/L] in which published storage lives are taken to hold: the mean in distribution centres and wholesale markets,
 * the kind of store those lives speak of.
 * Source: Wills, Warton & Ku 2000, Aust. J. Exp. Agric. 40:465–470 (abstract).
 */
export const referenceEthylene = 0.06;

/**
 * Lowest and highest ethylene [µL/L] told apart: life is linear in the logarithm between them.
 * Source: Wills et al. 1999, Aust. J. Exp. Agric. 39:221–224 (abstract): <0.005 to 10 µL/L; below 0.005 no action is claimed.
 */
export const leastEthylene = 0.005;
export const mostEthylene = 10;

/** An ethylene concentration [µL/L] held to the range the relations know. */
export const heldEthylene = (concentration: number): number =>
  within(concentration, leastEthylene, mostEthylene);

/** Tenfolds of an ethylene concentration [µL/L] above the reference (negative below), after holding it to the known range. */
export const tenfoldsOfEthylene = (concentration: number): number =>
  Math.log10(heldEthylene(concentration) / referenceEthylene);
