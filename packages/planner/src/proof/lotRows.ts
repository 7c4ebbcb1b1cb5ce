import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { weights } from "../rules/weights.js";
import type { Column, ColumnCosts, Columns } from "./columns.js";
import type { LinearModel } from "./linearModel.js";
import type { LotAir } from "./lotAir.js";
import { addPlaced, type Placed } from "./placed.js";
import type { Supposition } from "./supposition.js";
import { type AirOption, airsOf, airWith, cornersOf, payingBox, type ToldApart } from "./toldApart.js";

/** Rows that all lots share, while they are put together: portions at the table by day, litres by place on the first day. */
export interface SharedRows {
  readonly table: readonly number[];
  readonly room: readonly number[];
}

/** What a portion costs that is placed nowhere [g], besides what its litres over the room of a place would: more than any that is, so that a programme always has a solution. No bound is too high by it. */
const mostAPortionCosts = 1e4;

/** Puts the columns of lots into a linear programme. */
export class LotRows {
  readonly #columns: Columns;
  readonly #household: Household;
  readonly #known = new Map<Column, Map<number, Float64Array>>();
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
    const missing = model.column(this.#missingCosts(lot));
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
    const box = payingBox(column, told.densities.length);
    const airs = box < 0 ? [] : airsOf(box, told);
    const known = this.#knownIn(told, column);
    const costsIn = (air: AirOption | undefined): Float64Array => {
      const number = air?.number ?? 0;
      const before = known.get(number);
      if (before) return before;
      const found = this.#columns.costs(column, air ? airWith(ranges, air) : ranges);
      const flat = found
        ? flatCosts(found, column.readyDay)
        : new Float64Array(this.#household.days + 1).fill(Number.POSITIVE_INFINITY);
      known.set(number, flat);
      return flat;
    };
    const corner = cornersOf(airs, told);
    const least = costsIn(corner?.mildest);
    if (least.every((cost) => cost === Number.POSITIVE_INFINITY)) return [];
    const place = (air: AirOption | undefined, options: Placed["options"]): Placed => ({
      column,
      options,
      air: air?.number ?? 0,
      least,
      costs: () => costsIn(air),
      rows: [],
      values: [],
      onDay,
    });
    if (!corner) return [place(undefined, new Map())];
    const byCell = !sameCosts(least, costsIn(corner.mostEthylene));
    const byDensity = !sameCosts(least, costsIn(corner.driest));
    const done = new Set<string>();
    return airs.flatMap((air): Placed[] => {
      const { cell, density } = air;
      const key = `${byCell ? cell : ""} ${byDensity ? density : ""}`;
      if (done.has(key)) return [];
      done.add(key);
      const options = new Map<number, number>();
      if (byCell) options.set(air.axis, cell);
      if (byDensity) options.set(told.stretches.length + box, density);
      const { mildest } = corner;
      const here: AirOption = {
        ...air,
        ethylene: byCell ? air.ethylene : mildest.ethylene,
        vapour: byDensity ? air.vapour : mildest.vapour,
      };
      return [place({ ...here, number: told.airNumber(here) }, options)];
    });
  }

  /** Costs found already in the airs of the supposition at hand. */
  #knownIn({ supposition }: ToldApart, column: Column): Map<number, Float64Array> {
    if (supposition !== this.#supposition) this.#known.clear();
    this.#supposition = supposition;
    const known = this.#known.get(column) ?? new Map<number, Float64Array>();
    this.#known.set(column, known);
    return known;
  }

  #missingCosts({ index, portions }: BoundLot): number {
    const litres = this.#columns.of(index).reduce((most, { way }) => Math.max(most, way.litres[0]!), 0);
    return mostAPortionCosts + (weights.overflowLitre * litres) / portions;
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

const sameCosts = (one: Float64Array, other: Float64Array): boolean =>
  one === other || one.every((cost, day) => cost === other[day] || Math.abs(cost - other[day]!) < 1e-9);
