/**
 * Life at constant conditions [d] from the rates that use it up [1/d].
 *
 * Rates ≥ 0; Infinity when all are 0.
 * Source: Tijskens & Polderdijk 1996, Agricultural Systems 51:431–452: keeping quality = 1 / Σ k_i.
 */
export function keepingQuality(...rates: readonly number[]): number {
  return 1 / rates.reduce((sum, rate) => sum + rate, 0);
}
