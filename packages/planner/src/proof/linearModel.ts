/** A linear programme while it is being put together: minimise the cost of columns within rows. */
export class LinearModel {
  readonly costs: number[] = [];
  readonly integral: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly rowLower: number[] = [];
  readonly rowUpper: number[] = [];
  readonly starts: number[] = [0];
  readonly indices: number[] = [];
  readonly values: number[] = [];

  column(cost: number, upper = Number.POSITIVE_INFINITY, lower = 0, integral = false): number {
    this.costs.push(cost);
    this.integral.push(integral ? 1 : 0);
    this.lower.push(lower);
    this.upper.push(upper);
    return this.costs.length - 1;
  }

  row(lower: number, upper: number, entries: readonly (readonly [column: number, value: number])[]): number {
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
      ...(this.integral.includes(1) && { integrality: this.integral as (0 | 1)[] }),
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
