import type { Wrap } from "@keepwright/catalogue";
import { litresPerHourInCubicMetrePerSecond } from "./vapour.js";

/** A wrap as a box of air around one lot: what passes through it, for a lot of given mass. */
export interface WrapAir {
  /** False where the wrap leaves the lot in the air of its place. */
  readonly closes: boolean;
  /** Exchange of the air inside with the place: vapour [m³/s], ethylene [L/h]. */
  readonly exchange: number;
  readonly litresPerHour: number;
  /** The wrap's own water keeps the air inside saturated. */
  readonly wet: boolean;
  /** Share of transpired water replaced through the stem, 0…1. */
  readonly uptake: number;
}

/** An exchange at or above this [L/h for 1 kg] is open air (the catalogue's "none" and "glass of water"). */
export const openExchange = 100_000;

/**
 * Least exchange reckoned with [L/h for 1 kg]. A wrap with none would never settle; below this, ethylene inside is far
 * above the concentrations any relation distinguishes, and vapour is as good as enclosed.
 */
export const leastExchange = 0.001;

/**
 * The air inside a wrap around `kilograms` of produce.
 *
 * The catalogue gives the exchange for one kilogram; area, and with it what passes, grows with the two-thirds power of the mass.
 * Inferred: bodies of the same shape. Mass above 0; RangeError otherwise.
 */
export function wrapAir(wrap: Wrap, kilograms: number): WrapAir {
  if (!(kilograms > 0)) {
    throw new RangeError(`A lot of ${kilograms} kg cannot be wrapped or placed. Give a mass above 0.`);
  }
  const area = kilograms ** (2 / 3);
  const passed = (litresPerHour: number): number => Math.max(litresPerHour, leastExchange) * area;
  return {
    closes: wrap.vapourExchange.value < openExchange || wrap.ethyleneExchange.value < openExchange,
    exchange: passed(wrap.vapourExchange.value) / litresPerHourInCubicMetrePerSecond,
    litresPerHour: passed(wrap.ethyleneExchange.value),
    wet: wrap.wet,
    uptake: wrap.uptake.value,
  };
}
