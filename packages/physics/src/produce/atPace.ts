import type { ProduceAtTemperature } from "./atTemperature.js";
import type { Produce } from "./produce.js";

/**
 * How a lot differs from the middle one of its kind: how many times as long as that one's each process takes [1, > 0]. It gives off the same to the air,
 * and neither safety limits nor what spoils only the eating run slower for it.
 */
export interface LotPace {
  /** Every dose that ends a lot, ripening apart. */
  readonly lifeFactor: number;
  /** Ripening and over-ripening. */
  readonly ripeningFactor: number;
}

/**
 * A kind's constants for a lot of another pace: it bears that many times the loss of water, so that drying ends it that much later while the vapour it gives
 * off stays.
 */
export const produceAtPace = (produce: Produce, { lifeFactor }: LotPace): Produce => ({
  ...produce,
  maximumLoss: produce.maximumLoss * lifeFactor,
});

/** The rates at a temperature for a lot of another pace. */
export function ratesAtPace(
  at: ProduceAtTemperature,
  { lifeFactor, ripeningFactor }: LotPace,
): ProduceAtTemperature {
  const { deficits, rates } = at.chillingCurve;
  return {
    ...at,
    senescenceRate: at.senescenceRate / lifeFactor,
    senescenceRateChange: at.senescenceRateChange / lifeFactor,
    chillingCurve: { deficits, rates: rates.map((rate) => rate / lifeFactor) },
    freezingRate: at.freezingRate / lifeFactor,
    ripeningRate: at.ripeningRate / ripeningFactor,
    overRipeningRate: at.overRipeningRate / ripeningFactor,
    decayRate: at.decayRate / lifeFactor,
    sproutingRate: at.sproutingRate / lifeFactor,
    injuries: at.injuries.map(({ ratePerTenfold, logOnset }) => ({
      ratePerTenfold: ratePerTenfold / lifeFactor,
      logOnset,
    })),
  };
}
