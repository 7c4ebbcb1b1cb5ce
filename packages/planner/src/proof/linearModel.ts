/** What a row has of a column. */
export type Entry = readonly [column: number, value: number];

/** A linear programme while it is being put together: minimise the cost of columns within rows. */
export class LinearModel {
  readonly costs: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly rowLower: number[] = [];
  readonly rowUpper: number[] = [];
  readonly starts: number[] = [0];
  readonly indices: number[] = [];
  readonly values: number[] = [];

  column(cost: number, upper = Number.POSITIVE_INFINITY, lower = 0): number {
    this.costs.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
    return this.costs.length - 1;
  }

  row(lower: number, upper: number, entries: readonly Entry[]): number {
    this.rowLower.push(lower);
    this.rowUpper.push(upper);
    for (const [column, value] of entries) {
      if (value === 0) continue;
      this.indices.push(column);
      this.values.push(value);
    }
    this.starts.push(this.indices.length);
    return this.rowLower.length - 1;
  }

  get data() {
    return {
      numCols: this.costs.length,
      numRows: this.rowLower.length,
      colCost: this.costs,
      colLower: this.lower,
      colUpper: this.upper,
      rowLower: this.rowLower,
      rowUpper: this.rowUpper,
      matrix: {
        format: "csr",
        numRows: this.rowLower.length,
        numCols: this.costs.length,
        starts: this.starts,
        indices: this.indices,
        values: this.values,
      },
    } as const;
  }
}
