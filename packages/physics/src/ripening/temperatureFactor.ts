/**
 * Temperature [°C] to which days to ripen refer in the catalogue, and at which the factor is 1. Source: the usual temperature of ripening rooms and of
 * Wills et al. 2001.
 */
export const ripeningReferenceTemperature = 20;

/** Kelvins above the minimum over which ripening comes up to its full rate. Inferred: a sharp edge where the trade names one (banana, tomato), yet no jump. */
export const onsetKelvins = 3;

/**
 * Kelvins below the maximum from which ripening falls off, but never from below 20 °C. Inferred: bananas ripen the faster the warmer up to 30 °C and are inhibited
 * above (UC Davis Postharvest, questions and answers, node 7556), so the fall is kept short.
 */
export const fallKelvins = 2;

/** Factor [1] of the fall towards the maximum [°C]: 1 up to its start, 0 above the maximum. */
function fall(celsius: number, maximum: number): number {
  const start = Math.max(ripeningReferenceTemperature, maximum - fallKelvins);
  if (celsius <= start) return 1;
  return celsius >= maximum ? 0 : (maximum - celsius) / (maximum - start);
}

/**
 * Speed of ripening relative to 20 °C [1] at a temperature [°C]: with respiration, save that it comes up from 0 over the 3 K above the minimum [°C] and falls
 * to 0 over the 2 K below the maximum [°C]. Continuous for a maximum above 20 °C.
 *
 * Needs a minimum of at most 17 °C, so that 20 °C is free of it. That ripening goes with respiration is inferred, as for senescence; no constant is fitted.
 *
 * @param respirationRatio respiration at the temperature over respiration at 20 °C [1]
 */
export function ripeningTemperatureFactor(
  celsius: number,
  minimum: number,
  maximum: number,
  respirationRatio: number,
): number {
  if (celsius <= minimum) return 0;
  const onset = Math.min(1, (celsius - minimum) / onsetKelvins);
  return onset * respirationRatio * fall(celsius, maximum);
}
