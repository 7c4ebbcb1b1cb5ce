import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { dailyLimit } from "../rules/portionsADay.js";
import type { Column, ColumnCosts, Columns } from "./columns.js";
import type { LinearModel } from "./linearModel.js";
import type { LotAir } from "./lotAir.js";
import { addPlaced, type Placed } from "./placed.js";
import type { Supposition } from "./supposition.js";
import { airsOf, airWith, type ToldApart } from "./toldApart.js";

/** Rows that all lots share, while they are put together: portions at the table by day, litres by place on the first day. */
export interface SharedRows {
  readonly table: readonly number[];
  readonly room: readonly number[];
}

/** What a portion costs that is placed nowhere [g]: more than any that is, so that a programme always has a solution. No bound is too high by it. */
const mostAPortionCosts = 1e4;

/** Puts the columns of lots into a linear programme. */
export class LotRows {
  readonly #columns: Columns;
  readonly #household: Household;
  readonly #known = new Map<Column, Map<number, Float64Array | undefined>>();
  #supposition: Supposition | undefined;

  constructor(columns: Columns, household: Household) {
    this.#columns = columns;
    this.#household = household;
  }

  /**
   * A lot: all its portions in some columns, each eaten on a day or left, no more on a day than the household eats of one thing.
   *
   * @param told how finely the air is told apart
   */
  build(model: LinearModel, lot: BoundLot, ranges: LotAir, told: ToldApart, shared: SharedRows): Placed[] {
    const missing = model.column(mostAPortionCosts);
    const all = model.row(lot.portions, lot.portions, [[missing, 1]]);
    const limits = this.#dayLimits(model, lot);
    const { seasoning } = lot.commodity.household;
    const onDay = shared.table.map((row, day) => [
      ...(seasoning ? [] : [row]),
      ...limits.slice(day, day + 1),
    ]);
    const placed = this.#columns
      .of(lot.index)
      .flatMap((column) => this.#placeByAir(column, ranges, told, onDay));
    for (const one of placed) {
      const { litres, stays } = one.column.way;
      addPlaced(all, one, 1);
      addPlaced(shared.room[stays[0]!.place]!, one, litres[0]! / lot.portions);
    }
    return placed;
  }

  /** A column, once for every option of the air it lies in; once where that costs the same. */
  #placeByAir(column: Column, ranges: LotAir, told: ToldApart, onDay: Placed["onDay"]): Placed[] {
    const { cells, stretchAxis, drynesses, densityAxis, numberOf } = airsOf(column, told);
    const known = this.#knownIn(told, column);
    const costs = cells.map((cell, cellAt) =>
      drynesses.map((density, densityAt) => {
        const air = numberOf(cellAt, densityAt);
        if (known.has(air)) return known.get(air);
        const found = this.#columns.costs(column, airWith(ranges, cell, density));
        const flat = found && flatCosts(found, column.readyDay);
        known.set(air, flat);
        return flat;
      }),
    );
    if (costs.every((row) => row.every((one) => one === undefined))) return [];
    const byCell = costs.some((row) => row.some((one, at) => !sameCosts(one, costs[0]![at])));
    const byDensity = costs.some((row) => row.some((one) => !sameCosts(one, row[0])));
    return costs.slice(0, byCell ? undefined : 1).flatMap((row, cell) =>
      row.slice(0, byDensity ? undefined : 1).flatMap((one, density): Placed[] => {
        if (!one) return [];
        const options = new Map<number, number>();
        if (byCell) options.set(stretchAxis, cell);
        if (byDensity) options.set(densityAxis, density);
        const air = numberOf(cell, density);
        return [{ column, options, air, costs: one, rows: [], values: [], onDay }];
      }),
    );
  }

  /** Costs found already in the airs of the supposition at hand. */
  #knownIn({ supposition }: ToldApart, column: Column): Map<number, Float64Array | undefined> {
    if (supposition !== this.#supposition) this.#known.clear();
    this.#supposition = supposition;
    const known = this.#known.get(column) ?? new Map<number, Float64Array | undefined>();
    this.#known.set(column, known);
    return known;
  }

  /** Rows that hold a lot's portions of a day to what the household eats of one thing; none where it has no more. */
  #dayLimits(model: LinearModel, lot: BoundLot): number[] {
    const limit = dailyLimit(lot, this.#household);
    if (limit >= lot.portions) return [];
    return Array.from({ length: this.#household.days }, () => model.row(Number.NEGATIVE_INFINITY, limit));
  }
}

/** Costs by day, with what is left over last. */
function flatCosts({ onDay, left }: ColumnCosts, readyDay: number): Float64Array {
  const out = new Float64Array(onDay.length + 1);
  out.set(onDay);
  out.fill(Number.POSITIVE_INFINITY, 0, Math.min(onDay.length, readyDay));
  out[onDay.length] = left;
  return out;
}

const sameCosts = (one: Float64Array | undefined, other: Float64Array | undefined): boolean =>
  one === other ||
  (one !== undefined &&
    other !== undefined &&
    one.every((cost, day) => cost === other[day] || Math.abs(cost - other[day]!) < 1e-9));
