import { heldEthylene, referenceEthylene } from "./concentration.js";

/**
 * Ethylene [µL/L] at and below which a named injury does not grow: the reference level, or half the published concentration where that is lower.
 *
 * Inferred: published lives hold in the ordinary air of stores (0.06 µL/L, Wills, Warton & Ku 2000), and carrots kept there for months are not reported
 * bitter; an injury that grew there would end them before their published life.
 */
export const injuryOnset = (publishedConcentration: number): number =>
  Math.min(referenceEthylene, publishedConcentration / 2);

/**
 * Factor of concentration [1] on a named injury: 0 at and below its onset, 1 at the published concentration [µL/L], straight in the logarithm.
 * Held to 10 µL/L. The straight line is inferred from the same form for life (Wills et al. 1999).
 */
export function injuryConcentrationFactor(concentration: number, publishedConcentration: number): number {
  const onset = injuryOnset(publishedConcentration);
  const tenfolds = Math.log10(heldEthylene(concentration) / onset);
  return tenfolds > 0 ? tenfolds / Math.log10(publishedConcentration / onset) : 0;
}

/**
 * Rate of a named ethylene injury [1/d] in the published concentration, at a temperature [°C]: 1 / published days at the published temperature, and with
 * respiration elsewhere; 0 at and below `onlyAbove` [°C].
 *
 * Source of each injury: its catalogue record; of the limit: russet spotting of lettuce only above 4 °C (UC Davis Postharvest, questions and
 * answers, node 7265). Scaling with respiration is inferred.
 *
 * @param respirationRatio respiration at the temperature over respiration at the published temperature
 */
export const injuryRate = (
  days: number,
  respirationRatio: number,
  celsius: number,
  onlyAbove: number,
): number => (celsius > onlyAbove ? respirationRatio / days : 0);
