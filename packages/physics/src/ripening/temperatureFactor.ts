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
 * Power to ripen at a temperature [1]: 0 at and below the minimum [°C], 1 from 3 K above it to 2 K below the maximum [°C], 0 from there on. Continuous for a maximum
 * above 20 °C; 1 at 20 °C for a minimum of at most 17 °C. Where it is 1, ripeness is the fruit's only clock; where it is 0, its storage life is.
 */
export function ripeningPower(celsius: number, minimum: number, maximum: number): number {
  if (celsius <= minimum) return 0;
  return Math.min(1, (celsius - minimum) / onsetKelvins) * fall(celsius, maximum);
}

/**
 * Speed of ripening relative to 20 °C [1]: with respiration, as far as there is power to ripen. That ripening goes with respiration is inferred, as for
 * senescence; no constant is fitted.
 *
 * @param power see `ripeningPower`
 * @param respirationRatio respiration at the temperature over respiration at 20 °C [1]
 */
export const ripeningTemperatureFactor = (power: number, respirationRatio: number): number =>
  power * respirationRatio;
