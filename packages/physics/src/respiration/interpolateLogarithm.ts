import type { TemperatureTable } from "../produce/parts.js";

/** What happens outside the temperatures of a table. */
export interface Outside {
  /** "hold": the end value; "band": carried on at the Q10 of the nearest band; a number: carried on at that Q10. */
  readonly outside: "hold" | "band" | number;
}

/**
 * Bounds of a Q10 carried on outside a table [1]. Inferred: respiration bands within Handbook 66 run from 1 to about 4, save a few
 * steep ones (raspberry, 15–20 °C: 9) that would run away if carried on.
 */
export const outsideQ10Bounds = { least: 1, most: 4 } as const;

function logSlope(table: TemperatureTable, lower: number): number {
  const { temperatures, values } = table;
  return Math.log(values[lower + 1]! / values[lower]!) / (temperatures[lower + 1]! - temperatures[lower]!);
}

function boundedSlope(slope: number): number {
  return (
    Math.min(Math.log(outsideQ10Bounds.most), Math.max(Math.log(outsideQ10Bounds.least), slope * 10)) / 10
  );
}

function beyond(
  table: TemperatureTable,
  end: number,
  band: number,
  celsius: number,
  { outside }: Outside,
): number {
  const value = table.values[end]!;
  if (outside === "hold") return value;
  const single = table.temperatures.length === 1;
  if (outside === "band" && single) {
    throw new RangeError(
      `One value at ${table.temperatures[0]} °C gives no band to carry on at ${celsius} °C. Give a Q10.`,
    );
  }
  const slope = outside === "band" ? boundedSlope(logSlope(table, band)) : Math.log(outside) / 10;
  return value * Math.exp(slope * (celsius - table.temperatures[end]!));
}

/**
 * Value of a table at a temperature [°C], straight in the logarithm between its points: exact at them, and a constant Q10 between.
 *
 * Needs temperatures ascending and values above 0 (RangeError when the table is empty). Outside its points: as `outside` says.
 * The Q10 of a band carried on is held within `outsideQ10Bounds`.
 */
export function interpolateLogarithm(table: TemperatureTable, celsius: number, how: Outside): number {
  const { temperatures, values } = table;
  const last = temperatures.length - 1;
  if (last < 0)
    throw new RangeError(`A table without points has no value at ${celsius} °C. Give at least one point.`);
  if (celsius <= temperatures[0]!)
    return celsius === temperatures[0] ? values[0]! : beyond(table, 0, 0, celsius, how);
  if (celsius >= temperatures[last]!) {
    return celsius === temperatures[last] ? values[last]! : beyond(table, last, last - 1, celsius, how);
  }
  let lower = 0;
  while (temperatures[lower + 1]! <= celsius) lower++;
  return values[lower]! * Math.exp(logSlope(table, lower) * (celsius - temperatures[lower]!));
}
