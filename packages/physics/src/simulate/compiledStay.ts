import type { Wrap, WrapId } from "@keepwright/catalogue";
import type { AirTree } from "../climate/airTree.js";
import { pressurePerDensity } from "../climate/vapour.js";
import { wrapAir } from "../climate/wrapAir.js";
import { type ProduceAtTemperature, produceAtTemperature } from "../produce/atTemperature.js";
import type { SimulatedLot, SimulatedStay } from "./simulation.js";

/** A stay with all that does not change during it worked out. */
export interface CompiledStay {
  /** Index of the box, or the number of boxes for the open room. */
  readonly box: number;
  readonly at: ProduceAtTemperature;
  readonly temperature: number;
  readonly lit: boolean;
  readonly uptake: number;
  /** A wrap holds air of its own around the lot. */
  readonly closed: boolean;
  readonly wet: boolean;
  /** Through the wrap: vapour [m³/s], ethylene [L/h]. */
  readonly exchange: number;
  readonly litresPerHour: number;
  /** Pa per kg/m³ in the air that touches the lot: at the lot's temperature inside a wrap, else at the box's. */
  readonly pressurePerDensity: number;
  /** Density [kg/m³] in that air at the lot's surface pressure, and at saturation at the lot's temperature. */
  readonly surfaceDensity: number;
  readonly saturationDensity: number;
  /** Saturation pressure at the lot's temperature [Pa]. */
  readonly saturationPressure: number;
  /** Day on which it ends whatever happens; Infinity when it ends by ripeness or never. */
  readonly untilDay: number;
  readonly untilRipe: boolean;
}

function boxIndex(stay: SimulatedStay, lot: SimulatedLot, tree: AirTree): number {
  if (stay.box === "room") return tree.size;
  if (Number.isInteger(stay.box) && stay.box >= 0 && stay.box < tree.size) return stay.box;
  throw new RangeError(
    `A stay of “${lot.produce.id}” is in box ${stay.box}; there are ${tree.size} boxes, numbered from 0. Use one of them, or "room".`,
  );
}

function wrapOf(stay: SimulatedStay, wraps: ReadonlyMap<WrapId, Wrap>): Wrap {
  const wrap = wraps.get(stay.wrap);
  if (wrap) return wrap;
  throw new RangeError(`No wrap is called “${stay.wrap}”. Known: ${[...wraps.keys()].join(", ")}.`);
}

/** Works out a stay of a lot. `at` gives what depends on the temperature alone, so that a caller can keep it for the next time. */
export function compiledStay(
  stay: SimulatedStay,
  lot: SimulatedLot,
  tree: AirTree,
  wraps: ReadonlyMap<WrapId, Wrap>,
  at: ProduceAtTemperature = produceAtTemperature(lot.produce, lot.form, stay.temperature),
): CompiledStay {
  const box = boxIndex(stay, lot, tree);
  const wrap = wrapAir(wrapOf(stay, wraps), lot.kilograms);
  const perDensity = wrap.closes ? pressurePerDensity(stay.temperature) : tree.pressurePerDensity[box]!;
  const saturation = at.saturationVapourPressure;
  return {
    box,
    at,
    temperature: stay.temperature,
    lit: stay.lit,
    uptake: wrap.uptake,
    closed: wrap.closes,
    wet: wrap.closes && wrap.wet,
    exchange: wrap.exchange,
    litresPerHour: wrap.litresPerHour,
    pressurePerDensity: perDensity,
    surfaceDensity: at.surfaceVapourPressure / perDensity,
    saturationDensity: saturation / perDensity,
    saturationPressure: saturation,
    untilDay: typeof stay.until === "object" ? stay.until.day : Number.POSITIVE_INFINITY,
    untilRipe: stay.until === "ripe",
  };
}
