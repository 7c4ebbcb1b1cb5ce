import { saturationPressure } from "../air/saturationPressure.js";
import type { AirBox, RoomAir } from "../simulate/simulation.js";
import { litresPerHourInCubicMetrePerSecond, pressurePerDensity, saturationDensity } from "./vapour.js";

/**
 * The boxes of air as flat arrays. The room is one more entry at index `size`, so that fields of the air have `size + 1`
 * values and "the room" needs no special case when read.
 */
export interface AirTree {
  readonly size: number;
  /** Index of the box nearer the room; `size` for the room. Always less than a box's own index, or `size`. */
  readonly neighbour: Int32Array;
  /** Exchange with the neighbour, for ethylene [L/h] and for vapour [m³/s]. */
  readonly litresPerHour: Float64Array;
  readonly exchange: Float64Array;
  /** Air passed over a coil [m³/s] (0: no coil) and the density it is dried to [kg/m³]. */
  readonly coilExchange: Float64Array;
  readonly coilDensity: Float64Array;
  /** Of each box and of the room: Pa per kg/m³, density [kg/m³] and pressure [Pa] at saturation. */
  readonly pressurePerDensity: Float64Array;
  readonly saturationDensity: Float64Array;
  readonly saturationPressure: Float64Array;
  readonly roomDensity: number;
  readonly roomEthylene: number;
}

function neighbourOf(box: AirBox, index: number, size: number): number {
  const neighbour = box.exchange.with;
  if (neighbour === "room") return size;
  if (Number.isInteger(neighbour) && neighbour >= 0 && neighbour < index) return neighbour;
  throw new RangeError(
    `The air of “${box.name}” goes to box ${neighbour}, which does not come before it (it is box ${index}). List a box after its neighbour.`,
  );
}

function positive(value: number, what: string, name: string): number {
  if (value > 0 && Number.isFinite(value)) return value;
  throw new RangeError(`${what} of “${name}” is ${value}. Give a number above 0.`);
}

/** Checks boxes and lays them out for solving. Throws RangeError naming the box whose exchange or order is wrong. */
export function airTree(boxes: readonly AirBox[], room: RoomAir): AirTree {
  const size = boxes.length;
  const temperatures = [...boxes.map((box) => box.temperature), room.temperature];
  const litres = boxes.map((box) => positive(box.exchange.litresPerHour, "The air exchange", box.name));
  return {
    size,
    neighbour: Int32Array.from(boxes, (box, index) => neighbourOf(box, index, size)),
    litresPerHour: Float64Array.from(litres),
    exchange: Float64Array.from(litres, (value) => value / litresPerHourInCubicMetrePerSecond),
    coilExchange: Float64Array.from(
      boxes,
      (box) => (box.coil?.litresPerHour ?? 0) / litresPerHourInCubicMetrePerSecond,
    ),
    coilDensity: Float64Array.from(boxes, (box) => (box.coil ? saturationDensity(box.coil.temperature) : 0)),
    pressurePerDensity: Float64Array.from(temperatures, pressurePerDensity),
    saturationDensity: Float64Array.from(temperatures, saturationDensity),
    saturationPressure: Float64Array.from(temperatures, saturationPressure),
    roomDensity: room.relativeHumidity * saturationDensity(room.temperature),
    roomEthylene: room.ethylene,
  };
}
