import { copyOfRates, type ProduceAtTemperature } from "./atTemperature.js";
import { type Produce, produceWithLoss } from "./produce.js";

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
export const produceAtPace = (produce: Produce, { lifeFactor }: LotPace): Produce =>
  produceWithLoss(produce, produce.maximumLoss * lifeFactor);

/** The rates at a temperature for a lot of another pace. */
export function ratesAtPace(
  at: ProduceAtTemperature,
  { lifeFactor, ripeningFactor }: LotPace,
): ProduceAtTemperature {
  const { deficits, rates } = at.chillingCurve;
  const own = copyOfRates(at);
  own.senescenceRate = at.senescenceRate / lifeFactor;
  own.senescenceRateChange = at.senescenceRateChange / lifeFactor;
  own.chillingCurve = { deficits, rates: rates.map((rate) => rate / lifeFactor) };
  own.freezingRate = at.freezingRate / lifeFactor;
  own.ripeningRate = at.ripeningRate / ripeningFactor;
  own.overRipeningRate = at.overRipeningRate / ripeningFactor;
  own.decayRate = at.decayRate / lifeFactor;
  own.sproutingRate = at.sproutingRate / lifeFactor;
  own.injuries = at.injuries.map(({ ratePerTenfold, logOnset }) => ({
    ratePerTenfold: ratePerTenfold / lifeFactor,
    logOnset,
  }));
  return own;
}
