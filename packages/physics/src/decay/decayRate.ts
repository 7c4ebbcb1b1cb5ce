import type { Class } from "@keepwright/catalogue";
import { within } from "../within.js";

/**
 * All weights of decay but the Q10 are common practice, with no source: the trade agrees on their direction and order, nobody gives their size. They are
 * kept here, apart from everything measured, and each can be read and changed in one place.
 */
export const decayWeights = {
  /**
   * Twice these is the decay dose that ripe, whole, dry produce takes up over its published life at its recommended conditions. Under 1, save for very prone kinds: the
   * published life is told until something ends it, rot among the rest, so rot by itself may end it sooner only where a lot is kept worse.
   */
  proneness: { "very low": 0.05, low: 0.1, moderate: 0.2, high: 0.3, "very high": 0.55 } satisfies Record<
    Class,
    number
  >,
  /** How fast it rots unripe, ripe and over-ripe: infections lie quiet in unripe fruit and wake as it ripens. */
  ripeness: { unripe: 0.25, ripe: 2, overRipe: 4 },
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

const logUnripe = Math.log(decayWeights.ripeness.unripe);
const logRipe = Math.log(decayWeights.ripeness.ripe);

/**
 * Factor of ripeness [1]: from unripe (0) to ripe (1) straight in the logarithm, from ripe to over-ripe (2) straight; held outside. Common practice, no source.
 */
export function decayRipenessFactor(ripeness: number): number {
  const { ripe, overRipe } = decayWeights.ripeness;
  if (ripeness >= 1) return ripe + (overRipe - ripe) * within(ripeness - 1, 0, 1);
  return Math.exp(logUnripe + (logRipe - logUnripe) * within(ripeness, 0, 1));
}
