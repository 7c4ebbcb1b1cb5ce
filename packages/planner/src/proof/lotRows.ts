import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { dailyLimit } from "../rules/portionsADay.js";
import type { Column, Columns } from "./columns.js";
import { flatCosts } from "./ethylenePlane.js";
import type { Entry, LinearModel } from "./linearModel.js";
import type { LotAir } from "./lotAir.js";
import type { Placed } from "./placed.js";
import { productRows } from "./productRows.js";
import { liesIn, type Stretch, type StretchPlanes } from "./stretchPlanes.js";
import type { Supposition } from "./supposition.js";

/** Rows that all lots share, while they are put together: portions at the table by day, litres by place on the first day. */
export interface SharedRows {
  readonly table: readonly Entry[][];
  readonly room: readonly Entry[][];
}

/** Puts the columns of lots into a linear programme. */
export class LotRows {
  readonly #columns: Columns;
  readonly #planes: StretchPlanes;
  readonly #stretches: readonly Stretch[];
  readonly #household: Household;

  constructor(columns: Columns, planes: StretchPlanes, stretches: readonly Stretch[], household: Household) {
    this.#columns = columns;
    this.#planes = planes;
    this.#stretches = stretches;
    this.#household = household;
  }

  /**
   * A lot: all its portions in some columns, each eaten on a day or left, no more on a day than the household eats of one thing.
   *
   * @param mostEthylene of each box, with everything in it [µL/L]
   * @param later column of the least ethylene of each box in all windows but the first
   */
  build(
    model: LinearModel,
    lot: BoundLot,
    ranges: LotAir,
    supposition: Supposition,
    mostEthylene: Float64Array,
    later: readonly number[],
    shared: SharedRows,
  ): Placed[] {
    const own = this.#columns.of(lot.index);
    const byStretch = this.#stretches.map((stretch) => own.filter((column) => liesIn(column, stretch)));
    const planes = this.#stretches.map((stretch, which) =>
      this.#planes.plane(byStretch[which]!, stretch, ranges, supposition, mostEthylene),
    );
    const costsOf = (column: Column): Float64Array | undefined => {
      const plane = planes[byStretch.findIndex((columns) => columns.includes(column))];
      if (plane) return plane.bases.get(column);
      const costs = this.#columns.costs(column, ranges);
      return costs && flatCosts(costs);
    };
    const placed = own.map((column) => this.#place(model, column, costsOf(column), shared));
    model.row(
      lot.portions,
      lot.portions,
      placed.map(({ portions }): Entry => [portions, 1]),
    );
    this.#limitDays(model, lot, placed);
    planes.forEach((plane, which) => {
      if (!plane) return;
      const here = placed.filter(({ column }) => byStretch[which]!.includes(column));
      productRows(model, lot.portions, here, plane, later[this.#stretches[which]!.box]!);
    });
    return placed;
  }

  /** A column: portions cost what they do left over, and on the day they are eaten the difference. What cannot be costs nothing and holds none. */
  #place(model: LinearModel, column: Column, costs: Float64Array | undefined, shared: SharedRows): Placed {
    const { lot, litres, stays } = column.way;
    const { days } = this.#household;
    const left = costs?.[days] ?? 0;
    const portions = model.column(left, costs ? lot.portions : 0);
    const eaten: { day: number; index: number }[] = [];
    for (let day = Math.min(column.readyDay, days); day < days; day++) {
      const cost = costs?.[day] ?? Number.POSITIVE_INFINITY;
      const can = Number.isFinite(cost);
      const index = model.column(can ? cost - left : 0, can ? Number.POSITIVE_INFINITY : 0);
      eaten.push({ day, index });
      if (!lot.commodity.household.seasoning) shared.table[day]!.push([index, 1]);
    }
    if (eaten.length > 0) {
      model.row(Number.NEGATIVE_INFINITY, 0, [
        [portions, -1],
        ...eaten.map(({ index }): Entry => [index, 1]),
      ]);
    }
    shared.room[stays[0]!.place]!.push([portions, litres[0]! / lot.portions]);
    return { column, portions, eaten };
  }

  #limitDays(model: LinearModel, lot: BoundLot, placed: readonly Placed[]): void {
    const limit = dailyLimit(lot, this.#household);
    for (let day = 0; day < this.#household.days; day++) {
      const meals = placed.flatMap(({ eaten }) => eaten.filter((meal) => meal.day === day));
      if (meals.length === 0) continue;
      model.row(
        Number.NEGATIVE_INFINITY,
        limit,
        meals.map(({ index }): Entry => [index, 1]),
      );
    }
  }
}
