/**
 * Distance below saturation [relative humidity, 0…1] at which water begins to form now and then on what lies in the air.
 *
 * Inferred: the temperature of produce and wraps in a refrigerator swings by about ±0.5 K with its compressor (common practice,
 * no source), and saturation pressure changes by 7 % a kelvin near 4 °C (Hyland & Wexler 1983), so a surface passes the dew point in
 * part of each swing once the mean humidity is above 1 − 0.5 · 0.07.
 */
export const wetnessMargin = 0.035;

/**
 * Free water on a surface: 0 dry, 1 wet, by the relative humidity of the air right around it at the surface's temperature.
 *
 * 0 up to 0.965, 1 from saturation on, a smooth cubic between (continuous with its slope, so that any integrator can follow it).
 * Between the two, condensing in the cold part of a swing and drying in the warm part balance. Any humidity ≥ 0.
 */
export function wetnessOf(relativeHumidity: number): number {
  const share = (relativeHumidity - 1 + wetnessMargin) / wetnessMargin;
  if (share <= 0) return 0;
  return share >= 1 ? 1 : share * share * (3 - 2 * share);
}
