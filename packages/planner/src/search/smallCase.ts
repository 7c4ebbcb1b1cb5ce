import type { Problem } from "../problem/problem.js";

/** Portions of one lot above which it can be shared out in too many ways to look at them all. */
const mostPortions = 60;

/**
 * Few lots in few places: small enough to look at changes of two lots together, and at every option whatever is hoped of
 * it. Larger cases have more ways around a bad arrangement, and no time for this.
 */
export const isSmall = ({ lots, places }: Problem): boolean =>
  lots.length <= 5 && places.length <= 4 && lots.every(({ portions }) => portions <= mostPortions);
