import { tenfoldsOfEthylene } from "./concentration.js";

/**
 * Least factor on a life [1]: even in 10 µL/L the most sensitive kinds keep some time. Inferred: the straight lines of Wills
 * et al. 1999 reach close to zero life at 10 µL/L and cannot be followed through it.
 */
export const leastActionFactor = 0.05;

/** The factor from tenfolds of ethylene already computed; see `ethyleneActionFactor`. */
export function actionFactor(slope: number, tenfolds: number): number {
  return Math.max(leastActionFactor, 1 - slope * tenfolds);
}

/**
 * Factor on a life or on a time to ripen [1] in an ethylene concentration [µL/L]: 1 at the reference 0.06, falling straight in the
 * logarithm, held to 0.005…10 µL/L, never below 0.05.
 *
 * Source: Wills et al. 1999 (life), Wills et al. 2001 (time to ripen): linear in log concentration from <0.005 to 10 µL/L.
 *
 * @param slope share of the life at the reference lost for each tenfold ethylene
 */
export const ethyleneActionFactor = (slope: number, concentration: number): number =>
  actionFactor(slope, tenfoldsOfEthylene(concentration));
