import {
  type Catalogue,
  type Commodity,
  commodityOf,
  type GuidanceLanguage,
  type KindGuidance,
} from "@keepwright/catalogue";
import {
  ethyleneProduction,
  type Produce,
  produceFromCommodity,
  productionAtRipeness,
  respirationRate,
} from "@keepwright/physics";
import { agreeingPreparation, type Kitchen } from "@keepwright/planner";
import { cautionsOf } from "./cautionsOf.js";
import type { AnsweredGuidance, ItemAnswer } from "./itemAnswer.js";
import { lifeAt, type SteadyConditions } from "./lifeAt.js";
import { placesFor } from "./placesFor.js";
import { sourcesOf } from "./sourcesOf.js";

/** The reader's language, and what is told of a kind in it. */
export interface Told {
  readonly language?: GuidanceLanguage;
  readonly guidance?: KindGuidance | undefined;
}

/** Conditions asked about; what is left out is as recommended for the kind, and the ethylene of ordinary stores. */
export type AskedConditions = {
  readonly [name in keyof SteadyConditions]?: SteadyConditions[name] | undefined;
};

/**
 * Ethylene [µL/L] that published lives are taken to hold at: the mean in distribution centres and wholesale markets found by
 * Wills, Warton & Ku 2000.
 */
export const referenceEthylene = 0.06;

/** Ripeness of kinds that do not ripen: ready to eat as they are. */
const ready = 1;

function conditionsFor(commodity: Commodity, asked: AskedConditions): SteadyConditions {
  const { temperature, relativeHumidity } = commodity.storage;
  return {
    temperature: asked.temperature ?? (temperature.low + temperature.high) / 2,
    relativeHumidity: asked.relativeHumidity ?? (relativeHumidity.low + relativeHumidity.high) / 2,
    ethylene: asked.ethylene ?? referenceEthylene,
    ripeness: commodity.ripening ? (asked.ripeness ?? commodity.ripening.arrives.value) : ready,
  };
}

function productionOf(produce: Produce, { temperature, ripeness }: SteadyConditions) {
  const unripe = ethyleneProduction(produce.ethyleneUnripe, temperature);
  const ripe = ethyleneProduction(produce.ethyleneRipe, temperature);
  return { value: productionAtRipeness(Math.log(unripe), Math.log(ripe), ripeness), unripe, ripe };
}

const toldOf = ({ wraps, season, basis, words }: KindGuidance): AnsweredGuidance => ({
  wraps,
  season,
  basis,
  words,
});

/**
 * Answers where a kind belongs, how long it lasts in given air and why. Throws RangeError when the catalogue has no such kind.
 * @param told in which language it is named (English where nothing is said), and what is told of it there, passed on as it is
 * @param asked °C within −5…45, % within 1…100, µL/L within 0…1000
 */
export function answerItem(
  catalogue: Catalogue,
  id: string,
  kitchen: Kitchen,
  asked: AskedConditions = {},
  told: Told = {},
): ItemAnswer {
  const { language = "en", guidance } = told;
  const commodity = commodityOf(catalogue, id);
  const produce = produceFromCommodity(commodity);
  const { one, many, also } = commodity.names[language];
  const at = conditionsFor(commodity, asked);
  const where = placesFor({ commodity, ripeness: at.ripeness }, kitchen, catalogue);
  const { temperature, relativeHumidity, life } = commodity.storage;
  return {
    version: 1,
    commodity: id,
    names: { one, many, also },
    climacteric: commodity.climacteric,
    conditions: {
      temperature: { value: at.temperature, unit: "°C" },
      relativeHumidity: { value: at.relativeHumidity, unit: "%" },
      ethylene: { value: at.ethylene, unit: "µL/L" },
      ripeness: { value: at.ripeness, unit: "0 unripe, 1 ripe, 2 over-ripe" },
    },
    recommended: {
      temperature: { low: temperature.low, high: temperature.high, unit: "°C" },
      relativeHumidity: { low: relativeHumidity.low, high: relativeHumidity.high, unit: "%" },
      life: { low: life.low, high: life.high, unit: "d" },
    },
    respiration: {
      value: respirationRate(produce.respiration, at.temperature),
      unit: "mg CO2/(kg h)",
      fromMemory: commodity.respiration.some(({ fromMemory }) => fromMemory),
    },
    ethyleneProduction: {
      ...productionOf(produce, at),
      unit: "µL/(kg h)",
      fromMemory: commodity.ethylene.production.some(({ fromMemory }) => fromMemory),
    },
    ...lifeAt(produce, at),
    kitchen: kitchen.name,
    ...where,
    preparation: agreeingPreparation(
      commodity.preparation.map((step) => step.do),
      where.belongs.stays.map(({ wrap, moveWhen }) => ({ wrap, ripensHere: moveWhen === "ripe" })),
    ),
    cautions: cautionsOf(commodity, produce),
    sources: sourcesOf(commodity, catalogue.sources),
    ...(guidance && { guidance: toldOf(guidance) }),
  };
}
