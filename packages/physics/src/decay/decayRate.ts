import type { Class } from "@keepwright/catalogue";

/**
 * All weights of decay but the Q10 are common practice, with no source: the trade agrees on their direction and order, nobody gives their size. They are
 * kept here, apart from everything measured, and each can be read and changed in one place.
 */
export const decayWeights = {
  /**
   * Share of the decay dose used up over the published life by ripe, whole, dry produce at its recommended conditions is twice these
   * (once for being there, once for being ripe): under 1, so that only very prone kinds rot before their published life is over.
   */
  proneness: { "very low": 0.1, low: 0.2, moderate: 0.3, high: 0.4, "very high": 0.55 } satisfies Record<
    Class,
    number
  >,
  /**
   * How many times faster for each 10 K warmer. Strawberries decay ten times as fast at 20 °C as at 0 °C, a Q10 of 3.2 (UC Davis Postharvest, questions and
   * answers, Gorny), rounded and taken for all kinds.
   */
  q10: 3,
  /** How many times faster under free water all over. */
  wet: 4,
  /** How many times faster a dry-storing kind rots in saturated air than in its own. */
  damp: 5,
} as const;

/** Factor of temperature [1]: Q10 from the temperature of the published life [°C]. Source: see `decayWeights.q10`. */
export const decayTemperatureFactor = (celsius: number, referenceCelsius: number): number =>
  decayWeights.q10 ** ((celsius - referenceCelsius) / 10);

/** Factor of free water [1] on a surface 0 dry … 1 wet. Common practice, no source. */
export const decayWetnessFactor = (wetness: number): number => 1 + (decayWeights.wet - 1) * wetness;

/**
 * Factor of damp air [1] on kinds stored dry (onion, garlic, squash): 1 up to their own relative humidity (0…1), straight up to
 * `decayWeights.damp` in saturated air. Common practice, no source.
 */
export function decayDampFactor(relativeHumidity: number, dryAbove: number): number {
  const over = (Math.min(1, relativeHumidity) - dryAbove) / (1 - dryAbove);
  return over > 0 ? 1 + (decayWeights.damp - 1) * over : 1;
}

/** Factor of ripeness [1]: unripe 1, ripe 2, over-ripe 3. Common practice, no source. */
export const decayRipenessFactor = (ripeness: number): number => 1 + ripeness;
