import { decayDampFactor, decayRipenessFactor, decayWetnessFactor } from "../decay/decayRate.js";
import { actionFactor } from "../ethylene/actionFactor.js";
import { heldEthylene, referenceEthylene } from "../ethylene/concentration.js";
import { chillingRate, ripeThresholdShare } from "../keepingQuality/chilling.js";
import { transpirationRate } from "../waterLoss/transpirationRate.js";
import type { ProduceAtTemperature } from "./atTemperature.js";
import { type Conditions, at as index, type LotState } from "./lotState.js";

const secondsPerDay = 86_400;
const logReference = Math.log10(referenceEthylene);

// Read once: a property look-up for every state of every step would cost more than the arithmetic.
const {
  waterLost,
  carbonLost,
  senescence,
  chilling,
  ripeness,
  decay,
  sprouting,
  ethyleneInjury,
  eatingHarm,
  safety,
} = index;

function chillingRateNow(lot: ProduceAtTemperature, ripeShare: number): number {
  const deficit = lot.chillingDeficit + lot.chillingDeficitChange * ripeShare;
  return (deficit > 0 ? chillingRate(lot.chillingCurve, deficit) : 0) + lot.freezingRate;
}

function ripenessRateNow(lot: ProduceAtTemperature, ripe: number, tenfolds: number): number {
  if (ripe >= 1) return lot.overRipeningRate;
  return lot.ripeningRate === 0 ? 0 : lot.ripeningRate / actionFactor(lot.ripeningSlope, tenfolds);
}

/** How damp air speeds rot and roots in kinds stored dry [1]; 1 in all others. */
function dampNow(lot: ProduceAtTemperature, vapourPressure: number): number {
  return lot.dryAbove < 1 ? decayDampFactor(vapourPressure / lot.saturationVapourPressure, lot.dryAbove) : 1;
}

function decayRateNow(
  lot: ProduceAtTemperature,
  ripe: number,
  { wetness, vapourPressure }: Conditions,
): number {
  // Kinds that do not ripen come ready to eat: they count as ripe whatever ripeness was handed in.
  const ripenessFactor = decayRipenessFactor(lot.ripens ? ripe : 1);
  const wet = Math.max(wetness, lot.wetness);
  return lot.decayRate * ripenessFactor * decayWetnessFactor(wet) * dampNow(lot, vapourPressure);
}

/** The injury furthest on has one dose, so the fastest injury of the moment drives it: exact while one leads, a little early when they change places. */
function injuryRateNow({ injuries }: ProduceAtTemperature, logEthylene: number): number {
  let fastest = 0;
  for (let which = 0; which < injuries.length; which++) {
    const { ratePerTenfold, logOnset } = injuries[which]!;
    const rate = ratePerTenfold * (logEthylene - logOnset);
    if (rate > fastest) fastest = rate;
  }
  return fastest;
}

/**
 * Change of every state a day, into `out` in the order of `stateNames`. See docs/model/README.md for the equations and each relation for source and range.
 * Allocates nothing and takes one logarithm: it runs millions of times in a plan.
 */
export function stateRates(
  lot: ProduceAtTemperature,
  state: LotState,
  conditions: Conditions,
  out: Float64Array,
): void {
  const ripe = state[ripeness]!;
  const logEthylene = Math.log10(heldEthylene(conditions.ethylene));
  const tenfolds = logEthylene - logReference;
  out[waterLost] =
    secondsPerDay *
    transpirationRate(
      lot.conductance,
      lot.surfaceVapourPressure,
      conditions.vapourPressure,
      conditions.uptake,
    );
  out[carbonLost] = lot.carbonRate;
  const ripeShare = ripeThresholdShare(ripe);
  const aging = lot.senescenceRate + lot.senescenceRateChange * ripeShare;
  out[senescence] = aging / actionFactor(lot.senescenceSlope, tenfolds);
  out[chilling] = chillingRateNow(lot, ripeShare);
  out[ripeness] = lot.ripens ? ripenessRateNow(lot, ripe, tenfolds) : 0;
  out[decay] = decayRateNow(lot, ripe, conditions);
  // Bulbs root in damp air, and rooting brings the sprout on (Brewster 2008, ch. 7; Handbook 66 on garlic: both read): the same factor as for rot, whose size is common practice.
  out[sprouting] = lot.sproutingRate * (lot.sproutingRate > 0 ? dampNow(lot, conditions.vapourPressure) : 1);
  out[ethyleneInjury] = injuryRateNow(lot, logEthylene);
  out[eatingHarm] = state[eatingHarm]! < lot.harmMost ? lot.harmRate : 0;
  out[safety] = lot.safetyRate + (conditions.lit ? lot.greeningRate : 0);
}
