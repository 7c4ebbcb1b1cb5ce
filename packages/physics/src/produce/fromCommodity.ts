import type { Commodity } from "@keepwright/catalogue";
import { normalNinetiethPercentile } from "@keepwright/quantities";
import { decayWeights } from "../decay/decayRate.js";
import { sensitivitySlopes } from "../ethylene/sensitivity.js";
import { withoutDips } from "../respiration/respirationRate.js";
import { ripeningSlopes } from "../ripening/ethyleneResponse.js";
import { ethyleneTable, temperatureTable } from "./middle.js";
import type { EatingEffect } from "./parts.js";
import type { Produce } from "./produce.js";

/**
 * Standard deviation of ln(life) where a life is published as one number [1]. Inferred: a spread of 10–90 % from 0.75 to 1.33 of it, as in
 * published ranges of kinds with a middling one (strawberry 7–10 d, celery 1–2 months, broccoli 10–14 d give 0.13 to 0.27).
 */
export const usualLifeSpread = 0.2;

/** Kinds whose recommended humidity [%] ends here or lower are stored dry. Inferred: between ginger and onion (65–70 %) and all others (≥ 85 %). */
const dryStoringHumidity = 75;

const kilogramsPerNanogram = 1e-12;

function lifeSpread({ low, high }: { low: number; high: number }): number {
  return high > low ? Math.log(high / low) / (2 * normalNinetiethPercentile) : usualLifeSpread;
}

/**
 * Temperature the published life belongs to: the middle of the recommended range, but where part of that range lies below the lowest safe temperature,
 * the coldest safe temperature in it. A life published for 0–2 °C with chilling below 2 °C was reached at 2 °C.
 */
function storageTemperature({ storage: { temperature }, chilling }: Commodity): number {
  const middleOfRange = (temperature.low + temperature.high) / 2;
  const safe = Math.min(chilling?.threshold.value ?? temperature.low, temperature.high);
  return Math.max(middleOfRange, safe);
}

function chillingOf({ chilling }: Commodity): Produce["chilling"] {
  if (!chilling) return undefined;
  const threshold = chilling.threshold.value;
  const thresholdWhenRipe = chilling.thresholdWhenRipe?.value ?? threshold;
  return { threshold, thresholdWhenRipe, injury: temperatureTable(chilling.injury) };
}

function ripeningOf({ ripening }: Commodity): Produce["ripening"] {
  if (!ripening) return undefined;
  return {
    daysAt20: ripening.daysToRipe.value,
    minimum: ripening.minimum.value,
    maximum: ripening.maximum.value,
    ripeLifeDays: ripening.ripeLife.value,
    ripeLifeTemperature: ripening.ripeLife.temperature,
    ethyleneSlope: ripeningSlopes[ripening.ethyleneResponse.class],
    arrives: ripening.arrives.value,
  };
}

function eatingEffectsOf({ eatingEffects }: Commodity): EatingEffect[] {
  return eatingEffects.map(({ effect, below, above, days, loss }) => ({
    effect,
    below: below ?? Number.POSITIVE_INFINITY,
    above: above ?? Number.NEGATIVE_INFINITY,
    days,
    loss,
  }));
}

function waterOf({ water }: Commodity) {
  const transpiration = water.transpiration.value * kilogramsPerNanogram;
  return {
    transpiration,
    transpirationWithTops:
      (water.transpirationWithTops?.value ?? water.transpiration.value) * kilogramsPerNanogram,
    maximumLoss: water.maximumLoss.value / 100,
  };
}

function ethyleneOf({ ethylene }: Commodity) {
  return {
    ethyleneUnripe: ethyleneTable(ethylene.production, "unripe"),
    ethyleneRipe: ethyleneTable(ethylene.production, "ripe"),
    ethyleneSlope: sensitivitySlopes[ethylene.sensitivity.class],
    ethyleneInjuries: ethylene.injuries.map(({ effect, concentration, days, temperature, onlyAbove }) => ({
      effect,
      concentration,
      days,
      temperature,
      onlyAbove: onlyAbove ?? Number.NEGATIVE_INFINITY,
    })),
  };
}

/**
 * One kind as plain numbers, from its catalogue record. Ranges of life, respiration and ethylene are taken at their geometric middle (half the upper
 * end where the lower is 0), the recommended temperature at its middle (or its coldest safe part), the humidity at its upper end; a fall of respiration on warming is held level.
 */
export function produceFromCommodity(commodity: Commodity): Produce {
  const { storage, decay, cut, controlledAsSold, greensInLight, sprouting } = commodity;
  const water = waterOf(commodity);
  const ethylene = ethyleneOf(commodity);
  // Without spreads, and with what is absent named too: see `produceWithLoss`.
  return {
    id: commodity.id,
    respiration: withoutDips(temperatureTable(commodity.respiration)),
    storageTemperature: storageTemperature(commodity),
    storageLifeDays: Math.sqrt(storage.life.low * storage.life.high),
    lifeSpread: lifeSpread(storage.life),
    freezingPoint: storage.freezingPoint.value,
    ethyleneUnripe: ethylene.ethyleneUnripe,
    ethyleneRipe: ethylene.ethyleneRipe,
    ethyleneSlope: ethylene.ethyleneSlope,
    ethyleneInjuries: ethylene.ethyleneInjuries,
    transpiration: water.transpiration,
    transpirationWithTops: water.transpirationWithTops,
    maximumLoss: water.maximumLoss,
    chilling: chillingOf(commodity),
    ripening: ripeningOf(commodity),
    decayFactor: decayWeights.proneness[decay.proneness.class],
    soft: decay.flesh === "soft",
    dryAbove:
      storage.relativeHumidity.high <= dryStoringHumidity ? storage.relativeHumidity.high / 100 : undefined,
    sprouting: temperatureTable(sprouting),
    greensInLightDays: greensInLight?.days,
    eatingEffects: eatingEffectsOf(commodity),
    cutLifeDaysAt5: cut.life.value,
    timeTemperatureControl: cut.timeTemperatureControl.value,
    controlledAsSold: controlledAsSold?.value,
  };
}
