import type { CommodityFile } from "../fileSchema.js";
import { type Commodity, classes } from "../schema.js";
import { type Infer, inferAmong } from "./fromRelatives.js";
import {
  bulkDensity,
  cutLife,
  freezingPoint,
  humidityHigh,
  humidityLow,
  maximumLoss,
  productionWhen,
  proneness,
  type Quantity,
  respirationAt,
  respirationTemperatures,
  sensitivity,
  transpiration,
} from "./quantity.js";

type Ask = (quantity: Quantity) => NonNullable<ReturnType<Infer>>;

const figureOf = <Unit extends string>(ask: Ask, quantity: Quantity, unit: Unit) => {
  const { value, low, high, evidence } = ask(quantity);
  return { value, low, high, unit, ...evidence };
};

const classOf = (ask: Ask, quantity: Quantity) => {
  const { value, evidence } = ask(quantity);
  return { class: classes[Math.round(value)]!, ...evidence };
};

function humidity(ask: Ask): Commodity["storage"]["relativeHumidity"] {
  const [low, high] = [ask(humidityLow), ask(humidityHigh)];
  return { low: low.value, high: Math.max(low.value, high.value), unit: "%", ...high.evidence };
}

function respiration(ask: Ask): Commodity["respiration"] {
  let floor = 0;
  return respirationTemperatures.map((temperature) => {
    const { low, high, evidence } = ask(respirationAt(temperature));
    // Relatives differ from row to row; a rate that fell as it grew warmer would be their doing, not the kind's.
    const lifted = Math.max(floor, low);
    floor = lifted;
    return { temperature, low: lifted, high: Math.max(lifted, high), unit: "mg CO2/(kg h)", ...evidence };
  });
}

function production(kind: CommodityFile, ask: Ask): Commodity["ethylene"]["production"] {
  const states = kind.ripening ? (["unripe", "ripe"] as const) : (["any"] as const);
  return states.map((ripeness) => {
    const { low, high, evidence } = ask(productionWhen(ripeness));
    return { ripeness, temperature: 20, low, high, unit: "µL/(kg h)", ...evidence };
  });
}

function completedKind({ guidance: _, ...kind }: CommodityFile, infer: Infer): Commodity {
  const ask: Ask = (quantity) => {
    const found = infer(kind, quantity);
    if (found) return found;
    throw new RangeError(
      `kind "${kind.id}": ${quantity.name} is missing and fewer than two kinds state theirs; write the figure.`,
    );
  };
  const { storage, ethylene, water, decay, household, cut } = kind;
  return {
    ...kind,
    storage: {
      ...storage,
      relativeHumidity: storage.relativeHumidity ?? humidity(ask),
      freezingPoint: storage.freezingPoint ?? figureOf(ask, freezingPoint, "°C"),
    },
    respiration: kind.respiration ?? respiration(ask),
    ethylene: {
      ...ethylene,
      production: ethylene.production ?? production(kind, ask),
      sensitivity: ethylene.sensitivity ?? classOf(ask, sensitivity),
    },
    water: {
      ...water,
      transpiration: water.transpiration ?? figureOf(ask, transpiration, "ng/(kg s Pa)"),
      maximumLoss: water.maximumLoss ?? figureOf(ask, maximumLoss, "%"),
    },
    decay: { ...decay, proneness: decay.proneness ?? classOf(ask, proneness) },
    household: { ...household, bulkDensity: household.bulkDensity ?? figureOf(ask, bulkDensity, "kg/m³") },
    cut: { ...cut, life: cut.life ?? figureOf(ask, cutLife, "d") },
  };
}

/**
 * The kinds with every figure their files leave out inferred from their nearest relatives (`inferAmong`). Only figures
 * that files state are relied on, never inferred ones, so that the order of kinds does not matter. Throws RangeError
 * naming the kind and the quantity where there are too few relatives.
 */
export function withInferred(kinds: readonly CommodityFile[]): Commodity[] {
  const infer = inferAmong(kinds);
  return kinds.map((kind) => completedKind(kind, infer));
}
