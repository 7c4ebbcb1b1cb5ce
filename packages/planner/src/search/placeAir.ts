import { type SimulationOutcome, saturationPressure } from "@keepwright/physics";
import type { Problem } from "../problem/problem.js";

/** Air of a place: temperature [°C], relative humidity [%], ethylene [µL/L]. */
export interface PlaceAir {
  readonly temperature: number;
  readonly relativeHumidity: number;
  readonly ethylene: number;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/**
 * Mean air of a place over the days [from, to], both counted. A place that shares air (a door, a counter) has the vapour
 * of that air at its own temperature, so its relative humidity differs.
 */
export function placeAir(
  problem: Problem,
  outcome: SimulationOutcome,
  index: number,
  from = 0,
  to = problem.household.days,
): PlaceAir {
  const { box, place } = problem.places[index]!;
  const { temperature } = place;
  const { room } = problem.kitchen;
  const boxes = problem.boxes([]);
  const airTemperature = box === "room" ? room.temperature : boxes[box]!.temperature;
  const warmed = (humidity: number): number =>
    Math.min(1, (humidity * saturationPressure(airTemperature)) / saturationPressure(temperature)) * 100;
  if (box === "room") {
    return { temperature, relativeHumidity: warmed(room.relativeHumidity / 100), ethylene: room.ethylene };
  }
  const air = outcome.boxes[box]!;
  return {
    temperature,
    relativeHumidity: warmed(mean(air.relativeHumidity.slice(from, to + 1))),
    ethylene: mean(air.ethylene.slice(from, to + 1)),
  };
}
