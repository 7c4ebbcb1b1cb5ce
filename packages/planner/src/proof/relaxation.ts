import { type AirRanges, litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import type { Highs } from "highs";
import { dailyLimit } from "../rules/portionsADay.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import type { Column, Columns } from "./columns.js";
import { leastEmission, leastVapour, mostVapour } from "./given.js";
import type { KitchenBoxes } from "./kitchenBounds.js";
import { LinearModel } from "./linearModel.js";
import { smellRows } from "./smellRows.js";
import type { RootAir, Supposition } from "./supposition.js";

type Model = ReturnType<Highs["createModel"]>;

/** A column of the relaxation: its portions, and those eaten on each day on which it can be. */
interface Placed {
  readonly column: Column;
  readonly portions: number;
  readonly eaten: readonly { readonly day: number; readonly index: number }[];
}

/** The relaxation solved under a supposition. */
export interface Solved {
  /** Least objective [g]; Infinity where nothing satisfies the supposition. */
  readonly value: number;
  /** Portions by column, those with any. */
  readonly used: readonly { readonly column: Column; readonly portions: number }[];
  /** Ethylene [µL/L] of each box at the least, by window, with what is used. */
  readonly ethylene: readonly Float64Array[];
}

type Entries = (readonly [column: number, value: number])[];

/**
 * The relaxation as a linear programme. Portions of every lot go to columns (ways through places, first ready on a day), and from there to days or are left; portions a day, one lot's
 * limit a day, the litres of every place on the first day and the smells that meet then are as in the plan. Splits cost nothing but a share of their effort. Each column pays its
 * least costs in the air supposed, and what is used may not give off more ethylene or vapour than the air supposed allows.
 */
export class Relaxation {
  readonly #prepared: Prepared;
  readonly #kitchen: KitchenBoxes;
  readonly #air: RootAir;
  readonly #columns: Columns;
  readonly #model: Model;
  readonly #placed: Placed[] = [];
  readonly #costs: Float64Array;
  /** Ethylene columns by window and box, and the rows that say what of it the produce makes. */
  readonly #ethylene: number[][] = [];
  readonly #emissionRows: number[][] = [];
  /** By box: rows for vapour at the least and the most, and columns for conductance and supply. */
  readonly #vapour: ({ row: number; conductance: number; supply: number } | undefined)[] = [];
  /** Lowest density [kg/m³] at which anything in a box or behind it gives off nothing: below it, everything there only adds vapour. */
  readonly #driest: number[] = [];
  readonly #peak: { row: number; conductance: number; supply: number }[] = [];

  constructor(highs: Highs, prepared: Prepared, kitchen: KitchenBoxes, air: RootAir, columns: Columns) {
    this.#prepared = prepared;
    this.#kitchen = kitchen;
    this.#air = air;
    this.#columns = columns;
    const model = new LinearModel();
    this.#build(model);
    this.#costs = Float64Array.from(model.costs);
    this.#model = highs.createModel(model.data);
    this.#model.options.set("output_flag", false);
  }

  dispose(): void {
    this.#model.dispose();
  }

  solve(supposition: Supposition): Solved {
    const ranges = this.#air.ranges(supposition);
    this.#setCosts(ranges);
    this.#setAir(supposition);
    this.#model.run();
    const optimal = this.#model.getModelStatus() === 7;
    if (!optimal) return { value: Number.POSITIVE_INFINITY, used: [], ethylene: [] };
    const value = Number(this.#model.info.get("objective_function_value"));
    const { colValue } = this.#model.getSolution();
    const used = this.#placed.flatMap(({ column, portions }) =>
      colValue[portions]! > 1e-6 ? [{ column, portions: colValue[portions]! }] : [],
    );
    return { value, used, ethylene: this.#ethyleneOf(used, supposition) };
  }

  #build(model: LinearModel): void {
    const { problem, table, pace } = this.#prepared;
    const atTable: Entries[] = table.map(() => []);
    const room: Entries[] = problem.places.map(() => []);
    for (const lot of problem.lots) this.#buildLot(model, lot.index, atTable, room);
    for (const [day, entries] of atTable.entries()) {
      const ahead = model.column(pace.cost);
      model.row(Number.NEGATIVE_INFINITY, table[day]!, entries);
      model.row(Number.NEGATIVE_INFINITY, pace.portions, [...entries, [ahead, -1]]);
    }
    for (const [place, entries] of room.entries()) {
      const over = model.column(weights.overflowLitre);
      model.row(Number.NEGATIVE_INFINITY, problem.places[place]!.place.litres, [...entries, [over, -1]]);
    }
    smellRows(model, this.#prepared, this.#kitchen, this.#placed);
    this.#buildEthylene(model);
    this.#buildVapour(model);
  }

  #buildLot(model: LinearModel, index: number, atTable: Entries[], room: Entries[]): void {
    const { problem } = this.#prepared;
    const lot = problem.lots[index]!;
    const { seasoning } = lot.commodity.household;
    const all: Entries = [];
    const onDay: Entries[] = atTable.map(() => []);
    const ranges = this.#air.ranges(this.#air.root());
    for (const column of this.#columns.all) {
      if (column.way.lot !== lot) continue;
      const costs = this.#columns.costs(column, ranges)!;
      const portions = model.column(0, lot.portions);
      const eaten: { day: number; index: number }[] = [];
      const flow: Entries = [[portions, -1]];
      costs.onDay.forEach((cost, day) => {
        if (!Number.isFinite(cost)) return;
        const meal = model.column(0);
        eaten.push({ day, index: meal });
        flow.push([meal, 1]);
        onDay[day]!.push([meal, 1]);
        if (!seasoning) atTable[day]!.push([meal, 1]);
      });
      if (eaten.length > 0) model.row(Number.NEGATIVE_INFINITY, 0, flow);
      all.push([portions, 1]);
      room[column.way.programme.stays[0]!.place]!.push([portions, column.way.litres[0]! / lot.portions]);
      this.#placed.push({ column, portions, eaten });
    }
    model.row(lot.portions, lot.portions, all);
    const limit = dailyLimit(lot, problem.household);
    for (const entries of onDay) {
      if (entries.length > 0) model.row(Number.NEGATIVE_INFINITY, limit, entries);
    }
  }

  /** exchange · (ethylene of the box − that of the neighbour) ≥ what is given off in it and behind it. */
  #buildEthylene(model: LinearModel): void {
    const { size, neighbour, behind } = this.#kitchen;
    const { windows } = this.#air;
    windows.forEach((from, window) => {
      const to = windows[window + 1] ?? Number.POSITIVE_INFINITY;
      const columns: number[] = [];
      const rows: number[] = [];
      for (let box = 0; box <= size; box++) columns.push(model.column(0));
      for (let box = 0; box < size; box++) {
        const entries: Entries = [
          [columns[box]!, -1],
          [columns[neighbour[box]!]!, 1],
        ];
        for (const { column, portions } of this.#placed) {
          const emission = leastEmission(column, behind[box]!, from, to);
          if (emission > 0) entries.push([portions, emission / column.way.lot.portions]);
        }
        rows.push(model.row(Number.NEGATIVE_INFINITY, 0, entries));
      }
      this.#ethylene.push(columns);
      this.#emissionRows.push(rows);
    });
  }

  #buildVapour(model: LinearModel): void {
    const { size, behind } = this.#kitchen;
    for (let box = 0; box < size; box++) {
      const sum = (of: (column: Column) => { conductance: number; supply: number }) => {
        // In litres an hour and grams an hour: the solver minds numbers far from 1.
        const conductance = model.column(0);
        const supply = model.column(0);
        const conductances: Entries = [[conductance, -1]];
        const supplies: Entries = [[supply, -1]];
        for (const { column, portions } of this.#placed) {
          const given = of(column);
          const share = litresPerHourInCubicMetrePerSecond / column.way.lot.portions;
          if (given.conductance > 0) conductances.push([portions, given.conductance * share]);
          if (given.supply > 0) supplies.push([portions, given.supply * share * 1000]);
        }
        model.row(0, 0, conductances);
        model.row(0, 0, supplies);
        // The density is in grams a cubic metre, so a litre of it holds a thousandth.
        const row = model.row(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, [
          [supply, 1],
          [conductance, -1],
        ]);
        return { row, conductance, supply };
      };
      this.#vapour.push(sum((column) => leastVapour(column, box)));
      this.#driest.push(driest(this.#placed, behind[box]!));
      this.#peak.push(sum((column) => mostVapour(column, behind[box]!)));
    }
  }

  #setCosts(ranges: AirRanges): void {
    const costs = this.#costs;
    for (const { column, portions, eaten } of this.#placed) {
      const least = this.#columns.costs(column, ranges);
      const upper = least ? column.way.lot.portions : 0;
      this.#model.changeColBounds(portions, 0, upper);
      if (!least) continue;
      costs[portions] = least.left;
      for (const { day, index } of eaten) {
        const cost = least.onDay[day]!;
        // What can no longer be eaten on that day is dearer than anything.
        costs[index] = Number.isFinite(cost) ? cost - least.left : 1e6;
      }
    }
    this.#model.changeColsCost({ kind: "range", from: 0, to: costs.length - 1 }, costs);
  }

  #setAir(supposition: Supposition): void {
    const { size, neighbour, problem } = this.#kitchen;
    const exchange = this.#kitchen.exchange(supposition.vents);
    const { leastEthylene, leastAtMost } = supposition;
    this.#ethylene.forEach((columns, window) => {
      this.#model.changeColBounds(columns[size]!, problem.kitchen.room.ethylene, problem.kitchen.room.ethylene);
      for (let box = 0; box < size; box++) {
        const row = this.#emissionRows[window]![box]!;
        this.#model.changeCoefficient(row, columns[box]!, -exchange.most[box]!);
        this.#model.changeCoefficient(row, columns[neighbour[box]!]!, exchange.most[box]!);
        this.#model.changeColBounds(columns[box]!, leastEthylene[window]![box]!, leastAtMost[window]![box]!);
      }
    });
    for (let box = 0; box < size; box++) this.#setVapour(supposition, box, exchange);
  }

  /** What is in a box must not give off more vapour than its supposed most density allows, nor too little for the density it is supposed to reach. */
  #setVapour({ mostDensity, mostAtLeast }: Supposition, box: number, exchange: { least: Float64Array; most: Float64Array }): void {
    const { tree } = this.#kitchen.optimist;
    const next = this.#kitchen.neighbour[box]!;
    const grams = (density: number): number => density * 1000;
    const coil = (density: number): number =>
      tree.coilExchange[box]! * litresPerHourInCubicMetrePerSecond * Math.max(0, grams(density) - grams(tree.coilDensity[box]!));
    const most = mostDensity[box]!;
    const { row, conductance } = this.#vapour[box]!;
    const free = most > this.#driest[box]!;
    // Taken by the exchange at most, with the neighbour as dry as it can be and the air changing as fast as it can.
    const around = this.#air.leastDensity[next]!;
    const carried = most >= around ? exchange.most[box]! : exchange.least[box]!;
    this.#model.changeCoefficient(row, conductance, -grams(most));
    this.#model.changeRowBounds(
      row,
      Number.NEGATIVE_INFINITY,
      free ? Number.POSITIVE_INFINITY : carried * (grams(most) - grams(around)) + coil(most),
    );
    const level = mostAtLeast[box]!;
    const peak = this.#peak[box]!;
    const wetter = this.#air.mostDensity[next]!;
    const slowly = level >= wetter ? exchange.least[box]! : exchange.most[box]!;
    this.#model.changeCoefficient(peak.row, peak.conductance, -grams(level));
    this.#model.changeRowBounds(
      peak.row,
      level > 0 && level <= this.#driest[box]! ? slowly * (grams(level) - grams(wetter)) + coil(level) : Number.NEGATIVE_INFINITY,
      Number.POSITIVE_INFINITY,
    );
  }

  /** Ethylene that what is used makes at the least, no less than supposed. */
  #ethyleneOf(used: Solved["used"], { vents, leastEthylene }: Supposition): Float64Array[] {
    const { size, neighbour, behind } = this.#kitchen;
    const { windows } = this.#air;
    const exchange = this.#kitchen.exchange(vents);
    return windows.map((from, window) => {
      const to = windows[window + 1] ?? Number.POSITIVE_INFINITY;
      const found = leastEthylene[window]!.slice();
      for (let box = 0; box < size; box++) {
        let emission = 0;
        for (const { column, portions } of used) {
          emission += (portions * leastEmission(column, behind[box]!, from, to)) / column.way.lot.portions;
        }
        found[box] = Math.max(found[box]!, found[neighbour[box]!]! + emission / exchange.most[box]!);
      }
      return found;
    });
  }
}

function driest(placed: readonly Placed[], boxes: ReadonlySet<number>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { column } of placed) {
    for (const { way } of column.members) {
      for (const given of way.gives) {
        if (boxes.has(given.box)) least = Math.min(least, given.vapour.density);
      }
    }
  }
  return least;
}
