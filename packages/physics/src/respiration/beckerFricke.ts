/** The two coefficients of one kind in Becker & Fricke's correlation. */
export interface BeckerFrickeCoefficients {
  readonly f: number;
  readonly g: number;
}

/**
 * Respiration [mg CO2/(kg h)] by the correlation f (9T/5 + 32)^g, a power of the temperature in degrees Fahrenheit.
 *
 * Fitted over about 0…27 °C, where ASHRAE's heat of respiration tables lie; rises without end above; below −17.8 °C (0 °F) it is 0.
 * Source: Becker & Fricke 1996, as in ASHRAE Handbook Refrigeration ch. 19.
 */
export function beckerFrickeRespiration({ f, g }: BeckerFrickeCoefficients, celsius: number): number {
  return f * Math.max(0, (9 * celsius) / 5 + 32) ** g;
}

/** Heat set free for each milligram of carbon dioxide [J/mg]: burning glucose. Source: ASHRAE Handbook Refrigeration ch. 19 (from memory); 2816 kJ for 264 g. */
export const heatPerMilligramCarbonDioxide = 10.7;

/**
 * Coefficients by catalogue id. Source: Becker & Fricke 1996, as in ASHRAE Handbook Refrigeration ch. 19, table of commodity respiration
 * coefficients; from memory.
 */
export const beckerFrickeCoefficients: Readonly<Record<string, BeckerFrickeCoefficients>> = {
  apple: { f: 5.6871e-4, g: 2.5977 },
  blueberry: { f: 7.252e-5, g: 3.2584 },
  "brussels-sprout": { f: 0.0027238, g: 2.5728 },
  cabbage: { f: 6.0803e-4, g: 2.6183 },
  carrot: { f: 0.050018, g: 1.7926 },
  grape: { f: 7.056e-5, g: 3.033 },
  grapefruit: { f: 0.0035828, g: 1.9982 },
  "green-bean": { f: 0.0032828, g: 2.5077 },
  lemon: { f: 0.011192, g: 1.774 },
  lime: { f: 2.9834e-8, g: 4.7329 },
  onion: { f: 3.668e-4, g: 2.538 },
  orange: { f: 2.805e-4, g: 2.684 },
  peach: { f: 1.2996e-5, g: 3.6417 },
  pear: { f: 6.3614e-5, g: 3.2037 },
  plum: { f: 8.608e-5, g: 2.972 },
  potato: { f: 0.01709, g: 1.769 },
  rutabaga: { f: 1.6524e-4, g: 2.9039 },
  strawberry: { f: 3.6683e-4, g: 3.033 },
  "sweet-pepper": { f: 3.5104e-4, g: 2.7414 },
  tomato: { f: 2.0074e-4, g: 2.835 },
};
