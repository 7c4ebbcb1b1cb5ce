import type { Column } from "./columns.js";

/** A column of the relaxation under options of the air: portions of it, by the day they are eaten on and left over. The solver is told of them one day at a time, and only where they may serve. */
export interface Placed {
  readonly column: Column;
  /** By axis (see `Axis`): the option of the air whose costs it pays; nothing for axes along which they are the same. */
  readonly options: ReadonlyMap<number, number>;
  /** Of the air whose costs it pays: the same number for the same air. */
  readonly air: number;
  /** No more than what a portion costs by day, with what is left over last [g]; Infinity where it cannot be eaten. */
  readonly least: Float64Array;
  /** What it costs. Asked for only where the least would do, for it takes time. */
  readonly costs: () => Float64Array;
  /** Rows that all its portions are in, and what they have of one. */
  readonly rows: number[];
  readonly values: number[];
  /** By day: the rows that portions eaten then are in besides. */
  readonly onDay: readonly (readonly number[])[];
}

/** Puts all portions placed so into a row. */
export function addPlaced(row: number, { rows, values }: Placed, each: number): void {
  if (each === 0) return;
  rows.push(row);
  values.push(each);
}
