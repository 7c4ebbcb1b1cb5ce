import type { Ending, LotForm } from "../produce/lotState.js";
import type { TemperatureTable } from "../produce/parts.js";
import type { Produce } from "../produce/produce.js";

/** The value published nearest to a temperature [°C]; undefined in an empty table. */
function nearest({ temperatures, values }: TemperatureTable, celsius: number): number | undefined {
  let found: number | undefined;
  let distance = Number.POSITIVE_INFINITY;
  for (const [point, temperature] of temperatures.entries()) {
    if (Math.abs(temperature - celsius) >= distance) continue;
    distance = Math.abs(temperature - celsius);
    found = values[point];
  }
  return found;
}

/** Days [d] published for one ending of a whole lot at a temperature [°C]; undefined where the storage life is what it was worked out from. */
function timeOf(produce: Produce, endedBy: Ending, celsius: number): number | undefined {
  const { chilling, ripening, sprouting } = produce;
  if (endedBy === "chilling") return chilling && nearest(chilling.injury, celsius);
  if (endedBy === "sprouting") return nearest(sprouting, celsius);
  if (endedBy === "safety") return produce.greensInLightDays;
  if (endedBy === "over-ripeness" && ripening)
    return ripening.daysAt20 * Math.max(0, 1 - ripening.arrives) + ripening.ripeLifeDays;
  return undefined;
}

/**
 * The published time [d] that a life was worked out from, by what ends it: days to chilling injury or to sprouts at the temperature published nearest to the
 * one it lies at, days to green in light, days to ripen (as ripe as it usually comes) and to stay ripe; else its life once cut at 5 °C, or its storage life.
 *
 * How far a life lies from it is how far the model has carried a publication (`carriedFrom`). Inferred: a life that ends by cold was not worked out from the
 * storage life in the warm, however far the two lie apart.
 *
 * @param celsius temperature [°C] of the place where it ends
 */
export function publishedTime(
  produce: Produce,
  { cut }: Pick<LotForm, "cut">,
  endedBy: Ending,
  celsius: number,
): number {
  if (cut) return produce.cutLifeDaysAt5;
  return timeOf(produce, endedBy, celsius) ?? produce.storageLifeDays;
}
