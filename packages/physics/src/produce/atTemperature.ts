import { saturationPressure } from "../air/saturationPressure.js";
import { decayTemperatureFactor } from "../decay/decayRate.js";
import { injuryOnset, injuryRate } from "../ethylene/injuryRate.js";
import { ethyleneProduction, woundEthyleneFactor } from "../ethylene/production.js";
import { type ChillingCurve, chillingCurve } from "../keepingQuality/chilling.js";
import { freezingRateAt } from "../keepingQuality/freezing.js";
import { senescenceRate } from "../keepingQuality/senescenceRate.js";
import { carbonLossPerDay } from "../respiration/carbonLoss.js";
import { interpolateLogarithm } from "../respiration/interpolateLogarithm.js";
import { respirationRate } from "../respiration/respirationRate.js";
import { overRipeningRate, ripeningRate } from "../ripening/ripeningRate.js";
import { heatShare, storingShare } from "../ripening/temperatureFactor.js";
import { ripeningSpeed, unripeLife } from "../ripening/unripeLife.js";
import { cutSafetyRate } from "../safety/cutSafetyRate.js";
import { transpirationWhenCut } from "../waterLoss/cutSurface.js";
import { surfaceWaterActivity } from "../waterLoss/surfaceWaterActivity.js";
import { harmAtTemperature } from "./eatingHarm.js";
import type { LotForm } from "./lotState.js";
import { isRipening, type Produce } from "./produce.js";

/** Temperature [°C] for which lives of cut produce are given in the catalogue. */
export const cutLifeTemperature = 5;

/** A named ethylene injury at one temperature: rate [1/d] for each tenfold above its onset, and the onset's logarithm. */
export interface InjuryAtTemperature {
  readonly ratePerTenfold: number;
  readonly logOnset: number;
}

/** All that depends on kind, form and temperature alone, worked out once for a stay. Rates are per day. */
export interface ProduceAtTemperature {
  readonly temperature: number;
  /** Pa */
  readonly saturationVapourPressure: number;
  /** Pa: a_w p_sat(T) */
  readonly surfaceVapourPressure: number;
  /** Transpiration coefficient [kg/(kg s Pa)]. */
  readonly conductance: number;
  readonly carbonRate: number;
  /** In the reference ethylene; in kinds that ripen, while unripe: what storing and heat do to it. */
  readonly senescenceRate: number;
  /** Its change to when ripe (see `ripeThresholdShare`); 0 in kinds that do not ripen. */
  readonly senescenceRateChange: number;
  readonly senescenceSlope: number;
  readonly chillingCurve: ChillingCurve;
  /** Deficit [K] below the lowest safe temperature when unripe, and its change to when ripe. */
  readonly chillingDeficit: number;
  readonly chillingDeficitChange: number;
  readonly freezingRate: number;
  /** In the reference ethylene. */
  readonly ripeningRate: number;
  readonly ripeningSlope: number;
  readonly overRipeningRate: number;
  /** Dry and whole-ripeness factors left out: those depend on state and conditions. */
  readonly decayRate: number;
  readonly ripens: boolean;
  /** Free water that it brought along, 0…1. */
  readonly wetness: number;
  /** Relative humidity (0…1) above which a dry-storing kind rots faster; 2 in kinds stored humid. */
  readonly dryAbove: number;
  readonly sproutingRate: number;
  readonly injuries: readonly InjuryAtTemperature[];
  readonly harmRate: number;
  readonly harmMost: number;
  readonly safetyRate: number;
  readonly greeningRate: number;
  readonly logEthyleneUnripe: number;
  readonly logEthyleneRipe: number;
}

const noChilling: ChillingCurve = { deficits: [0], rates: [0] };

/** Rate of senescence unripe, and its change to when ripe [1/d], in the reference ethylene; see docs/model/ripening.md for kinds that ripen. */
function senescenceOf(produce: Produce, form: LotForm, celsius: number) {
  const at = (temperature: number) => respirationRate(produce.respiration, temperature);
  if (isRipening(produce) && !form.cut) {
    const { ripening } = produce;
    const whole = 1 / unripeLife(celsius, produce);
    const unripeShare = Math.max(
      storingShare(celsius, ripening.minimum),
      heatShare(celsius, ripening.maximum),
    );
    return { senescenceRate: unripeShare * whole, senescenceRateChange: (1 - unripeShare) * whole };
  }
  const rate = form.cut
    ? senescenceRate(at(celsius), at(cutLifeTemperature), produce.cutLifeDaysAt5)
    : senescenceRate(at(celsius), at(produce.storageTemperature), produce.storageLifeDays);
  return { senescenceRate: rate, senescenceRateChange: 0 };
}

/**
 * Share of the whole thing's slope that is left once it is cut [1]. Stopping the action of ethylene at 0.1 µL/L and 5 °C gained whole heads of lettuce 100 % of life,
 * shredded lettuce 50 % (abstract on 1-MCP and iceberg lettuce, read).
 */
const slopeShareWhenCut = 0.5;

/**
 * Wills et al. 1999 measured life against ethylene in kinds that do not ripen; in those that do, the published slope is that of ripening (Wills et al. 2001).
 * Cut pieces of kinds that ripen are ripe already and their lives were measured in closed packs, in their own ethylene: no slope is left (inferred).
 */
function senescenceSlopeOf({ ripening, ethyleneSlope }: Produce, form: LotForm): number {
  if (form.cut) return ripening ? 0 : slopeShareWhenCut * ethyleneSlope;
  return ripening ? ripening.ethyleneSlope : ethyleneSlope;
}

function conductanceOf(produce: Produce, form: LotForm): number {
  const whole = form.tops ? produce.transpirationWithTops : produce.transpiration;
  return form.cut ? transpirationWhenCut(whole) : whole;
}

function chillingOf({ chilling }: Produce, form: LotForm, celsius: number) {
  if (!chilling || form.cut)
    return { chillingCurve: noChilling, chillingDeficit: 0, chillingDeficitChange: 0 };
  return {
    chillingCurve: chillingCurve(chilling.threshold, chilling.injury),
    chillingDeficit: chilling.threshold - celsius,
    chillingDeficitChange: chilling.thresholdWhenRipe - chilling.threshold,
  };
}

function injuriesOf(produce: Produce, celsius: number): InjuryAtTemperature[] {
  const rate = respirationRate(produce.respiration, celsius);
  return produce.ethyleneInjuries.map(({ concentration, days, temperature, onlyAbove }) => {
    const ratio = rate / respirationRate(produce.respiration, temperature);
    const onset = injuryOnset(concentration);
    return {
      ratePerTenfold: injuryRate(days, ratio, celsius, onlyAbove) / Math.log10(concentration / onset),
      logOnset: Math.log10(onset),
    };
  });
}

function ripeningOf(produce: Produce, form: LotForm, celsius: number) {
  if (!isRipening(produce) || form.cut)
    return { ripens: produce.ripening !== undefined, ripeningRate: 0, ripeningSlope: 0, overRipeningRate: 0 };
  const { ripening } = produce;
  return {
    ripens: true,
    ripeningRate: ripeningRate(ripeningSpeed(celsius, produce), ripening.daysAt20, 1),
    ripeningSlope: ripening.ethyleneSlope,
    overRipeningRate: overRipeningRate(celsius, ripening.ripeLifeDays, ripening.ripeLifeTemperature),
  };
}

/** A cut is a wound: its decay is counted over the short life of the cut thing, yet never slower than the whole one's. */
function decayOf(produce: Produce, form: LotForm, celsius: number): number {
  const rateOver = (life: number, reference: number) =>
    (produce.decayFactor * decayTemperatureFactor(celsius, reference)) / life;
  const wholeRate = rateOver(produce.storageLifeDays, produce.storageTemperature);
  return form.cut ? Math.max(wholeRate, rateOver(produce.cutLifeDaysAt5, cutLifeTemperature)) : wholeRate;
}

function sproutingOf({ sprouting }: Produce, form: LotForm, celsius: number): number {
  if (form.cut || sprouting.temperatures.length === 0) return 0;
  return 1 / interpolateLogarithm(sprouting, celsius, { outside: "hold" });
}

/** The safe time of what is cut, or is sold under the same control. */
const safetyOf = (produce: Produce, form: LotForm, celsius: number): number =>
  form.cut || produce.controlledAsSold ? cutSafetyRate(celsius, produce.timeTemperatureControl) : 0;

function ethyleneOf(produce: Produce, form: LotForm, celsius: number) {
  const wound = form.cut ? Math.log(woundEthyleneFactor) : 0;
  return {
    logEthyleneUnripe: Math.log(ethyleneProduction(produce.ethyleneUnripe, celsius)) + wound,
    logEthyleneRipe: Math.log(ethyleneProduction(produce.ethyleneRipe, celsius)) + wound,
  };
}

/**
 * Works out all that depends on temperature [°C] alone, for one kind in one form. −5…45 °C; outside, the tables carry on as their relations say.
 *
 * Cut produce: its own published life at 5 °C replaces the whole one's; it neither ripens, sprouts nor chills (the life was published in the cold), loses water
 * through its cut face, gives off more ethylene, rots faster and has its safe time.
 */
export function produceAtTemperature(produce: Produce, form: LotForm, celsius: number): ProduceAtTemperature {
  const saturation = saturationPressure(celsius);
  const aging = senescenceOf(produce, form, celsius);
  const chilling = chillingOf(produce, form, celsius);
  const ripening = ripeningOf(produce, form, celsius);
  const harm = harmAtTemperature(produce.eatingEffects, celsius);
  const ethylene = ethyleneOf(produce, form, celsius);
  // Written out without spreads: objects then share one hidden class, which the rates read faster.
  return {
    temperature: celsius,
    saturationVapourPressure: saturation,
    surfaceVapourPressure: surfaceWaterActivity * saturation,
    conductance: conductanceOf(produce, form),
    carbonRate: carbonLossPerDay(respirationRate(produce.respiration, celsius)),
    senescenceRate: aging.senescenceRate,
    senescenceRateChange: aging.senescenceRateChange,
    senescenceSlope: senescenceSlopeOf(produce, form),
    chillingCurve: chilling.chillingCurve,
    chillingDeficit: chilling.chillingDeficit,
    chillingDeficitChange: chilling.chillingDeficitChange,
    freezingRate: freezingRateAt(celsius, produce.freezingPoint),
    ripens: ripening.ripens,
    ripeningRate: ripening.ripeningRate,
    ripeningSlope: ripening.ripeningSlope,
    overRipeningRate: ripening.overRipeningRate,
    decayRate: decayOf(produce, form, celsius),
    wetness: form.wet ? 1 : 0,
    dryAbove: produce.dryAbove ?? 2,
    sproutingRate: sproutingOf(produce, form, celsius),
    injuries: injuriesOf(produce, celsius),
    harmRate: harm.harmRate,
    harmMost: harm.harmMost,
    safetyRate: safetyOf(produce, form, celsius),
    greeningRate: produce.greensInLightDays ? 1 / produce.greensInLightDays : 0,
    logEthyleneUnripe: ethylene.logEthyleneUnripe,
    logEthyleneRipe: ethylene.logEthyleneRipe,
  };
}

/** The same rates, to be written over: made here so that all of them share the hidden class of `produceAtTemperature`. */
export const copyOfRates = (
  at: ProduceAtTemperature,
): { -readonly [Name in keyof ProduceAtTemperature]: ProduceAtTemperature[Name] } => ({
  temperature: at.temperature,
  saturationVapourPressure: at.saturationVapourPressure,
  surfaceVapourPressure: at.surfaceVapourPressure,
  conductance: at.conductance,
  carbonRate: at.carbonRate,
  senescenceRate: at.senescenceRate,
  senescenceRateChange: at.senescenceRateChange,
  senescenceSlope: at.senescenceSlope,
  chillingCurve: at.chillingCurve,
  chillingDeficit: at.chillingDeficit,
  chillingDeficitChange: at.chillingDeficitChange,
  freezingRate: at.freezingRate,
  ripens: at.ripens,
  ripeningRate: at.ripeningRate,
  ripeningSlope: at.ripeningSlope,
  overRipeningRate: at.overRipeningRate,
  decayRate: at.decayRate,
  wetness: at.wetness,
  dryAbove: at.dryAbove,
  sproutingRate: at.sproutingRate,
  injuries: at.injuries,
  harmRate: at.harmRate,
  harmMost: at.harmMost,
  safetyRate: at.safetyRate,
  greeningRate: at.greeningRate,
  logEthyleneUnripe: at.logEthyleneUnripe,
  logEthyleneRipe: at.logEthyleneRipe,
});
