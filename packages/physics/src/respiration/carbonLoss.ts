/** Grams of glucose burnt for each gram of carbon dioxide given off: 180 g/mol of C6H12O6 for 6 × 44 g/mol of CO2. Exact stoichiometry. */
export const glucosePerCarbonDioxide = 180 / 264;

const hoursPerDay = 24;
const kilogramsPerMilligram = 1e-6;

/**
 * Dry matter burnt [fraction of mass a day] at a respiration rate [mg CO2/(kg h)], counted as glucose. Any rate ≥ 0.
 *
 * The water set free (108 g for 264 g CO2) stays in the produce; acids and fats burn at another ratio, which is left out.
 * Source: C6H12O6 + 6 O2 → 6 CO2 + 6 H2O (ASHRAE Handbook Refrigeration ch. 19 uses the same reaction).
 */
export const carbonLossPerDay = (respiration: number): number =>
  respiration * hoursPerDay * kilogramsPerMilligram * glucosePerCarbonDioxide;
