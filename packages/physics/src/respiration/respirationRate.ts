import type { TemperatureTable } from "../produce/parts.js";
import { interpolateLogarithm } from "./interpolateLogarithm.js";

/**
 * Respiration [mg CO2/(kg h)] at a temperature [°C] from a table of published rates, straight in the logarithm between them.
 *
 * Outside the table: the Q10 of the nearest band, held to 1…4 (see `outsideQ10Bounds`).
 * Source of the tables: USDA Agriculture Handbook 66 (2016), summary table of respiration rates; the interpolation in the logarithm is
 * the usual Q10 rule.
 */
export const respirationRate = (table: TemperatureTable, celsius: number): number =>
  interpolateLogarithm(table, celsius, { outside: "band" });

/**
 * The same table with no fall on warming: a published dip is held level at the rate below it.
 *
 * Inferred: some rows fall as it gets warmer (topped carrot 40 at 15 °C and 25 at 20 °C in Handbook 66), which no respiration does
 * below about 30 °C; holding the higher figure errs towards a shorter life in the warmth.
 */
export function withoutDips(table: TemperatureTable): TemperatureTable {
  let most = 0;
  const values = table.values.map((value) => {
    most = Math.max(most, value);
    return most;
  });
  return { temperatures: table.temperatures, values };
}
