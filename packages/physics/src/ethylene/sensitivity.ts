import type { Class } from "@keepwright/catalogue";

/**
 * Share of the life (in the reference 0.06 µL/L) lost for each tenfold ethylene, by class of sensitivity.
 *
 * Inferred. "moderate" and "high" lie on either side of 0.418, the slope that makes life at 0.005 µL/L 1.6 times that at 0.1, the mean of 23
 * kinds in Wills et al. 1999: (1 + 1.079 s) / (1 − 0.222 s) = 1.6. "low" and "very low" are two thirds and a third of it, "very high"
 * four thirds: the classes are told apart in the trade by words only, no publication gives their slopes.
 */
export const sensitivitySlopes: Record<Class, number> = {
  "very low": 0.14,
  low: 0.28,
  moderate: 0.38,
  high: 0.45,
  "very high": 0.56,
};
