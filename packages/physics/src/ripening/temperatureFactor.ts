/**
 * Q10 of ripening between the minimum and the optimum [1].
 *
 * Fitted to one row: mature-green tomatoes need 18 days to ripen at 12.5 °C and 7 at 25 °C (UC Davis Postharvest, days to ripen by starting colour; from
 * memory): (18/7)^(10/12.5) = 2.13, taken as 2. Its other rows and other kinds are checks.
 */
export const ripeningQ10 = 2;

/** Kelvins above the minimum over which ripening comes up to its full rate. Inferred: a sharp edge where tables show one (banana, tomato), yet no jump. */
export const onsetKelvins = 3;

/**
 * Kelvins below the maximum from which ripening falls off, but never from below 20 °C. Inferred: bananas ripen the faster the warmer up to 30 °C and are inhibited
 * above (UC Davis Postharvest, questions and answers, node 7556), so the fall is kept short.
 */
export const fallKelvins = 2;

const referenceCelsius = 20;

/** Factor [1] of the fall towards the maximum [°C]: 1 up to its start, 0 from the maximum on. */
function fall(celsius: number, maximum: number): number {
  if (celsius >= maximum && celsius > referenceCelsius) return 0;
  const start = Math.max(referenceCelsius, maximum - fallKelvins);
  return celsius <= start ? 1 : (maximum - celsius) / (maximum - start);
}

/**
 * Speed of ripening relative to 20 °C [1] at a temperature [°C]: 0 at and below the minimum, 1 at 20 °C, a constant Q10 between and
 * up to 2 K below the maximum, from there straight down to 0 at the maximum. Continuous.
 *
 * Needs a minimum of at most 17 °C (so that 20 °C is free of it) and a maximum of at least 20 °C.
 */
export function ripeningTemperatureFactor(celsius: number, minimum: number, maximum: number): number {
  if (celsius <= minimum) return 0;
  const onset = Math.min(1, (celsius - minimum) / onsetKelvins);
  return onset * ripeningQ10 ** ((celsius - referenceCelsius) / 10) * fall(celsius, maximum);
}
