/**
 * Temperature [°C] to which days to ripen refer in the catalogue, and at which the factor is 1. Source: the usual temperature of ripening rooms and of
 * Wills et al. 2001.
 */
export const ripeningReferenceTemperature = 20;

/**
 * Q10 of ripening, of over-ripening, and of the loss of power to ripen in the cold [1], where a kind's own is not known (`unripeQ10`). The general rule of thumb for living tissue
 * (van 't Hoff).
 *
 * Inferred, not fitted to one pair. Between the published storage life, unripe in the cold, and the days to ripen at 20 °C with the ripe life, the kinds of the catalogue imply Q10s whose middle is
 * 1.8 (`test/ripening/impliedQ10.test.ts`). Published pairs of one process scatter about it: mature-green tomatoes 18 days at 12.5 °C and 7 at 25 °C (UC Davis, from
 * memory), 2.1; ripe mango a week at 10–13 °C (read) and two to three days at 20 °C (from memory), about 3; ripe avocado up to a week in a refrigerator and one or two
 * days at 20 °C (secondary page; from memory), about 2.4; firm-ripe tomato 3–5 days at 7–10 °C (UC Davis, mirror) and 2–4 days red (NC State Extension), about
 * 1.3; banana, holding temperature of little influence from 15 to 27 °C (Rippon & Trochoulias 1976, abstract), about 1. Respiration is not used: its tables rise two to
 * four times in 10 K, up to sixteen times from 0 to 20 °C, because they set unripe fruit in the cold beside ripe fruit in the warmth.
 */
export const ripeningQ10 = 2;

/** Kelvins above the minimum over which ripening comes up to its full rate. Inferred: a sharp edge where the trade names one (banana, tomato), yet no jump. */
export const onsetKelvins = 3;

/**
 * Kelvins below the maximum from which heat begins to spoil ripening, but never from below 20 °C. Inferred: bananas ripen the faster the warmer up to 30 °C and are
 * inhibited above (UC Davis Postharvest, questions and answers, node 7556), so the way is kept short.
 */
export const heatKelvins = 2;

/** How many times faster at one temperature [°C] than at another [1], by a Q10. Source: see `ripeningQ10`. */
export const ripeningTemperatureFactor = (celsius: number, referenceCelsius: number, q10: number): number =>
  q10 ** ((celsius - referenceCelsius) / 10);

/**
 * Power to ripen at a temperature [1]: 0 at and below the minimum [°C], 1 from 3 K above it, straight between. 1 at 20 °C for a minimum of at most 17 °C. Heat does not take it
 * away: see `heatShare`.
 */
export function ripeningPower(celsius: number, minimum: number): number {
  if (celsius <= minimum) return 0;
  return Math.min(1, (celsius - minimum) / onsetKelvins);
}

/**
 * Share of storing in what unripe fruit goes through [1]: 1 up to where the power to ripen is whole, 0 from 3 K above that on, straight between. What storing does to fruit must not
 * fade before ripening is at full rate, or it would keep longer a little warmer.
 */
export const storingShare = (celsius: number, minimum: number): number =>
  1 - ripeningPower(celsius - onsetKelvins, minimum);

/**
 * Share of ripening that heat spoils [1]: 0 up to 2 K below the maximum [°C], 1 from the maximum on, straight between. Above its maximum fruit goes on softening, but ripens badly: "pulp softens
 * and peel stays green" (banana), "red colour fails" (tomato), "failed to ripen properly" (avocado), as the catalogue's sources of the maximum say.
 */
export function heatShare(celsius: number, maximum: number): number {
  const start = Math.max(ripeningReferenceTemperature, maximum - heatKelvins);
  if (celsius <= start) return 0;
  return celsius >= maximum ? 1 : (celsius - start) / (maximum - start);
}
