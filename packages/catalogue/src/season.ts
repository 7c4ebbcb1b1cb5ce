import type { Guidance } from "./guidance.js";

/** A span of months, 1 to 12, first to last; it may run over the turn of the year. */
export type MonthSpan = readonly [number, number];

const monthsInYear = 12;

/** A month half a year later: the same season on the other side of the equator. */
const halfAYearLater = (month: number): number => ((month + monthsInYear / 2 - 1) % monthsInYear) + 1;

function monthsIn([first, last]: MonthSpan): number[] {
  const count = ((last - first + monthsInYear) % monthsInYear) + 1;
  return Array.from({ length: count }, (_, index) => ((first - 1 + index) % monthsInYear) + 1);
}

/** Whether spans of months take in the whole year. */
export const isWholeYear = (spans: readonly MonthSpan[]): boolean =>
  new Set(spans.flatMap(monthsIn)).size === monthsInYear;

/** Harvest months in both hemispheres: where the data give no south of its own, the north moved by six months. */
export function seasonOf({ northern, southern }: Pick<Guidance["season"], "northern" | "southern">) {
  const moved = northern.map(([first, last]): MonthSpan => [halfAYearLater(first), halfAYearLater(last)]);
  return {
    northern: northern as readonly MonthSpan[],
    southern: (southern ?? moved) as readonly MonthSpan[],
    /** The south was moved from the north, and differs from it. */
    inferred: southern === undefined && !isWholeYear(northern),
  };
}
