/**
 * Conductance [any one unit] of several in series: skin, air film, wrap. Each > 0; none gives Infinity (nothing resists). 0 when one is 0.
 *
 * Source: resistances add: Becker & Fricke 1996 (1/k_t = 1/k_s + 1/k_a), as in ASHRAE Handbook Refrigeration ch. 19.
 */
export function seriesConductance(...conductances: readonly number[]): number {
  return 1 / conductances.reduce((resistance, conductance) => resistance + 1 / conductance, 0);
}
