/**
 * Standard normal distribution function Φ(z), absolute error below 7.5e-8.
 *
 * Source: Abramowitz & Stegun, Handbook of Mathematical Functions (1964), formula 26.2.17 (coefficients from memory;
 * checked in test/normal.test.ts against tabulated Φ).
 */
export function normalDistribution(z: number): number {
  const above = aboveMiddle(Math.abs(z));
  return z < 0 ? 1 - above : above;
}

/** Φ(z) for z ≥ 0. */
function aboveMiddle(z: number): number {
  if (z > 9) return 1;
  const t = 1 / (1 + 0.2316419 * z);
  const polynomial =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - 0.3989422804014327 * Math.exp(-0.5 * z * z) * polynomial;
}

/** z at which a standard normal variable is below with chance 0.9 (and above 1 − 0.9 by symmetry). */
export const normalNinetiethPercentile = 1.2815515655446004;
