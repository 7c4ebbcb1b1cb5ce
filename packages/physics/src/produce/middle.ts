import type { Commodity } from "@keepwright/catalogue";
import type { TemperatureTable } from "./parts.js";

interface RangeAtTemperature {
  readonly temperature: number;
  readonly low: number;
  readonly high: number;
}

/** Least ethylene production told from none [µL/(kg h)]: keeps the logarithm finite where "0" is published. Inferred: a thousandth of the class "very low". */
const leastProduction = 1e-4;

/** Middle of a published range: geometric, or half the upper end where the lower is 0 ("less than"). */
export const middle = ({ low, high }: { low: number; high: number }): number =>
  low > 0 ? Math.sqrt(low * high) : high / 2;

/**
 * Ranges at temperatures as one ascending table of their middles; several at one temperature count as their geometric mean. Empty when there are none.
 */
export function temperatureTable(ranges: readonly RangeAtTemperature[], least = 0): TemperatureTable {
  const temperatures = [...new Set(ranges.map(({ temperature }) => temperature))].sort(
    (one, other) => one - other,
  );
  const values = temperatures.map((temperature) => {
    const here = ranges
      .filter((range) => range.temperature === temperature)
      .map((range) => Math.max(least, middle(range)));
    return Math.exp(here.reduce((sum, value) => sum + Math.log(value), 0) / here.length);
  });
  return { temperatures, values };
}

/** Ethylene production of one ripeness: its own figures, else those for any ripeness, else the other ripeness's (the kind then does not change). */
export function ethyleneTable(
  production: Commodity["ethylene"]["production"],
  ripeness: "unripe" | "ripe",
): TemperatureTable {
  const other = ripeness === "ripe" ? "unripe" : "ripe";
  for (const wanted of [ripeness, "any", other]) {
    const found = production.filter((figure) => figure.ripeness === wanted);
    if (found.length > 0) return temperatureTable(found, leastProduction);
  }
  throw new RangeError(
    "A kind without any ethylene production cannot be simulated. Add one figure at 20 °C.",
  );
}
