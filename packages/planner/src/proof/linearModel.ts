/** What a row has of a column. */
export type Entry = readonly [column: number, value: number];

/** A linear programme while it is being put together, what is placed left out: minimise the cost of columns within rows. No row may have a column twice. */
export class LinearModel {
  readonly costs: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly rowLower: number[] = [];
  readonly rowUpper: number[] = [];
  /** By column: its rows, and what they have of it. */
  readonly rows: number[][] = [];
  readonly values: number[][] = [];

  column(cost: number, upper = Number.POSITIVE_INFINITY, lower = 0): number {
    this.costs.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
    this.rows.push([]);
    this.values.push([]);
    return this.costs.length - 1;
  }

  row(lower: number, upper: number, entries: readonly Entry[] = []): number {
    this.rowLower.push(lower);
    this.rowUpper.push(upper);
    const row = this.rowLower.length - 1;
    for (const [column, value] of entries) this.add(row, column, value);
    return row;
  }

  /** Puts a column into a row. */
  add(row: number, column: number, value: number): void {
    if (value === 0) return;
    this.rows[column]!.push(row);
    this.values[column]!.push(value);
  }
}
