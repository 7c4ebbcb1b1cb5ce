import type { Problem } from "../problem/problem.js";

/**
 * Few lots in few places: small enough to look at changes of two lots together, and at every option whatever is hoped of
 * it. Larger cases have more ways around a bad arrangement, and no time for this.
 */
export const isSmall = ({ lots, places }: Problem): boolean => lots.length <= 5 && places.length <= 4;
