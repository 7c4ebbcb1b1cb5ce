import type { Highs } from "highs";
import type { LinearModel } from "./linearModel.js";
import type { Placed } from "./placed.js";

type Model = ReturnType<Highs["createModel"]>;

/** Reduced cost [g] below which portions would lower the optimum. */
const leastReduced = 1e-7;

/** Kinds of portions the solver is told of at once, at most, the most promising first. Declared: it changes how fast the optimum is found, not what it is. */
const mostAtOnce = 1000;

/** Portions placed and eaten on one day, or left over. */
export interface Meal {
  readonly placed: Placed;
  readonly day: number;
}

export interface Optimum {
  readonly value: number;
  /** By column of the programme. */
  readonly columns: Float64Array;
  /** Meals the solver was told of, how many portions of each, and their reduced costs [g]. */
  readonly meals: readonly (Meal & { readonly portions: number; readonly reduced: number })[];
}

/** The shape in which the solver takes columns. */
class Told {
  readonly cost: number[] = [];
  readonly lower: number[] = [];
  readonly upper: number[] = [];
  readonly starts: number[] = [0];
  readonly indices: number[] = [];
  readonly values: number[] = [];

  add(
    cost: number,
    lower: number,
    upper: number,
    rows: readonly number[],
    values: readonly number[],
    more: readonly number[] = [],
  ): void {
    this.cost.push(cost);
    this.lower.push(lower);
    this.upper.push(upper);
    for (let entry = 0; entry < rows.length; entry++) {
      this.indices.push(rows[entry]!);
      this.values.push(values[entry]!);
    }
    for (const row of more) {
      this.indices.push(row);
      this.values.push(1);
    }
    this.starts.push(this.indices.length);
  }

  matrix(numRows: number) {
    return {
      format: "csc",
      numRows,
      numCols: this.cost.length,
      starts: Int32Array.from(this.starts),
      indices: Int32Array.from(this.indices),
      values: Float64Array.from(this.values),
    } as const;
  }
}

const mealsTold = (meals: readonly Meal[]): Told => {
  const told = new Told();
  for (const { placed, day } of meals) {
    told.add(
      placed.costs()[day]!,
      0,
      Number.POSITIVE_INFINITY,
      placed.rows,
      placed.values,
      placed.onDay[day] ?? [],
    );
  }
  return told;
};

/** What of a portion's cost the rows it is in give back at these prices, whatever the day [g]. */
function givenBack({ rows, values }: Placed, duals: Float64Array): number {
  let sum = 0;
  for (let entry = 0; entry < rows.length; entry++) sum += duals[rows[entry]!]! * values[entry]!;
  return sum;
}

const givenBackOn = ({ onDay }: Placed, day: number, duals: Float64Array): number => {
  let sum = 0;
  for (const row of onDay[day] ?? []) sum += duals[row]!;
  return sum;
};

/** Meals that would lower the optimum at these prices, the most promising. What the solver was told of is not among them, but for rounding: at its optimum it has no negative reduced cost. */
function promising(
  all: readonly Placed[],
  duals: Float64Array,
  told: ReadonlyMap<Placed, Set<number>>,
): Meal[] {
  const found: (Meal & { reduced: number })[] = [];
  for (const placed of all) {
    const base = givenBack(placed, duals);
    const known = told.get(placed);
    let costs: Float64Array | undefined;
    for (let day = 0; day < placed.least.length; day++) {
      const back = base + givenBackOn(placed, day, duals);
      if (!(placed.least[day]! - back < -leastReduced) || known?.has(day)) continue;
      costs ??= placed.costs();
      const reduced = costs[day]! - back;
      if (reduced < -leastReduced) found.push({ placed, day, reduced });
    }
  }
  return found.sort((a, b) => a.reduced - b.reduced).slice(0, mostAtOnce);
}

/**
 * Solves a linear programme from some meals on: those that would lower the optimum are added until none is left, so that the optimum is that of all of them. The programme itself must
 * have a solution whatever meals there are.
 *
 * @param first meals to begin with
 * @returns undefined where the solver finds no optimum, for its numbers lie too far apart
 */
export function solvePriced(
  highs: Highs,
  solver: Model,
  model: LinearModel,
  all: readonly Placed[],
  first: readonly Meal[],
): Optimum | undefined {
  const numRows = model.rowLower.length;
  const begin = new Told();
  model.costs.forEach((cost, column) => {
    begin.add(cost, model.lower[column]!, model.upper[column]!, model.rows[column]!, model.values[column]!);
  });
  solver.passModel({
    numCols: begin.cost.length,
    numRows,
    colCost: begin.cost,
    colLower: begin.lower,
    colUpper: begin.upper,
    rowLower: model.rowLower,
    rowUpper: model.rowUpper,
    matrix: begin.matrix(numRows),
  });
  const meals: Meal[] = [];
  const told = new Map<Placed, Set<number>>();
  for (let more: readonly Meal[] = first; ; ) {
    const { cost, lower, upper, ...rest } = mealsTold(more);
    const as = (values: number[]) => Float64Array.from(values);
    if (more.length > 0) {
      const matrix = Told.prototype.matrix.call({ cost, ...rest } as Told, numRows);
      solver.addCols({ cost: as(cost), lower: as(lower), upper: as(upper), matrix });
    }
    for (const meal of more) {
      meals.push(meal);
      const days = told.get(meal.placed) ?? new Set<number>();
      told.set(meal.placed, days.add(meal.day));
    }
    const { optimal } = highs.constants.modelStatus;
    solver.run();
    // Where it stops short of the optimum from where it was, it may find it from the start.
    if (solver.getModelStatus() !== optimal) {
      solver.clearSolver();
      solver.run();
    }
    if (solver.getModelStatus() !== optimal) return undefined;
    const { colValue, rowDual, colDual } = solver.getSolution();
    more = promising(all, rowDual, told);
    if (more.length > 0) continue;
    const before = model.costs.length;
    return {
      value: Number(solver.info.get("objective_function_value")),
      columns: colValue,
      meals: meals.map((meal, at) => ({
        ...meal,
        portions: colValue[before + at]!,
        reduced: colDual[before + at]!,
      })),
    };
  }
}
