import type { Highs } from "highs";
import { roundingLitres } from "../rules/capacity.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import { axisRows, shareColumns, ventRows } from "./axis.js";
import { Cells } from "./cells.js";
import type { Column, Columns } from "./columns.js";
import { emissionRows, ethyleneColumns, ethyleneConditions, hasteRows } from "./ethyleneRows.js";
import { leastEmission } from "./given.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import { LinearModel } from "./linearModel.js";
import { LotRows, type SharedRows } from "./lotRows.js";
import type { Placed } from "./placed.js";
import { type Meal, type Optimum, solvePriced } from "./pricing.js";
import type { RootAir } from "./rootAir.js";
import { smellRows } from "./smellRows.js";
import { type Stretch, stretchesOf } from "./stretch.js";
import { contradicts, type Supposition } from "./supposition.js";
import type { ToldApart } from "./toldApart.js";
import { densityColumns, driestSurfaces, vapourConditions } from "./vapourConditions.js";
import { isFree } from "./ways.js";

type Model = ReturnType<Highs["createModel"]>;

/** Portions of a column, and the options of the air they are placed under. */
export interface Used {
  readonly column: Column;
  readonly portions: number;
  readonly options: Placed["options"];
}

/** The relaxation solved under a supposition. */
export interface Solved {
  /** Least objective [g]; Infinity where nothing satisfies the supposition. */
  readonly value: number;
  /** Portions by column, those with any. */
  readonly used: readonly Used[];
  /** Share of every option of every axis of the air. */
  readonly shares: readonly (readonly number[])[];
  /** Ethylene [µL/L] of each box at the least with what is used, by window; last, at all times. */
  readonly ethylene: readonly Float64Array[];
}

const impossible: Solved = { value: Number.POSITIVE_INFINITY, used: [], shares: [], ethylene: [] };

/** Nothing is known: no plan is below it. */
const unsolved: Solved = { ...impossible, value: 0 };

/** Portions below which the solver's rounding is seen, not a choice. */
const leastPortions = 1e-6;

/** Reduced cost [g] of a portion below which it is begun with the next time. Declared: it changes the time taken, not the optimum. */
const nearlyServed = 0.2;

const mealKey = ({ air }: Placed, day: number): number => 1000 * air + day;

/** Share by which the solver's optimum may be above the true one: its tolerances, with room. */
const solverError = 1e-6;

/**
 * The relaxation as a linear programme. Portions of every lot go to columns (ways through places, first ready on a day), and from there to days or are left; portions a day, one lot's
 * limit a day, the litres of every place on the first day and the smells that meet then are as in the plan. Splits cost nothing but a share of their effort. Each column pays its
 * least costs in the air supposed, what is used may not give off more ethylene or vapour than the air supposed allows, and what lies in one stretch of air pays for the ethylene there.
 */
export class Relaxation {
  readonly #highs: Highs;
  readonly #prepared: Prepared;
  readonly #kitchen: KitchenBoxes;
  readonly #air: RootAir;
  readonly #lots: LotRows;
  readonly #cells: Cells;
  readonly #stretches: readonly Stretch[];
  readonly #numbers = new Map<string, number>();
  readonly #numberOf = (bound: string): number => {
    const number = this.#numbers.get(bound) ?? this.#numbers.size + 1;
    this.#numbers.set(bound, number);
    return number;
  };
  readonly #airNumber: ToldApart["airNumber"] = ({ ethylene, vapour }) =>
    this.#numberOf(`${ethylene.always.least} ${ethylene.later.least} ${vapour.range.most}`);
  readonly #driest: readonly number[];
  /** Meals that served, or nearly. */
  readonly #served = new Map<Column, Set<number>>();
  #model: Model | undefined;

  constructor(highs: Highs, prepared: Prepared, kitchen: KitchenBoxes, air: RootAir, columns: Columns) {
    const { household } = prepared.problem;
    this.#highs = highs;
    this.#prepared = prepared;
    this.#kitchen = kitchen;
    this.#air = air;
    this.#lots = new LotRows(columns, household);
    this.#stretches = stretchesOf(kitchen);
    const most = air.mostEthylene(kitchen.exchange(kitchen.everyVent()));
    this.#cells = new Cells(kitchen, air, this.#stretches, most, prepared.problem.kitchen.room.ethylene);
    this.#driest = driestSurfaces(columns.all, kitchen);
  }

  /** Gives back the solver's memory. */
  dispose(): void {
    this.#model?.dispose();
    this.#model = undefined;
  }

  solve(supposition: Supposition): Solved {
    if (contradicts(supposition)) return impossible;
    const model = new LinearModel();
    const { placed, told } = this.#build(model, supposition);
    // No option of some air is left by what is supposed.
    if (told.axes.some(({ options }) => options.length === 0)) return impossible;
    const first = this.#first(placed);
    const optimum = solvePriced(this.#highs, this.#solver(), model, placed, first);
    if (!optimum) return unsolved;
    const { value, columns, meals } = optimum;
    this.#remember(meals);
    const portions = new Map<Placed, number>();
    for (const meal of meals) portions.set(meal.placed, (portions.get(meal.placed) ?? 0) + meal.portions);
    const used = [...portions].flatMap(([{ column, options }, some]) =>
      some > leastPortions ? [{ column, portions: some, options }] : [],
    );
    const shares = told.axes.map((axis) => axis.shares.map((index) => columns[index]!));
    return {
      value: value - solverError * Math.abs(value),
      used,
      shares,
      ethylene: this.#ethyleneOf(used, supposition),
    };
  }

  #solver(): Model {
    if (!this.#model) {
      this.#model = this.#highs.createModel();
      this.#model.options.set("output_flag", false);
    }
    return this.#model;
  }

  /** Meals to begin with: what is left over of the cheapest way of each lot, and what nearly served before. */
  #first(all: readonly Placed[]): Meal[] {
    const { days } = this.#prepared.problem.household;
    const first: Meal[] = [];
    const cheapest = new Map<number, Placed>();
    for (const placed of all) {
      const { index } = placed.column.way.lot;
      const known = this.#served.get(placed.column);
      if (known) {
        for (let day = 0; day <= days; day++)
          if (known.has(mealKey(placed, day)) && Number.isFinite(placed.costs()[day]!))
            first.push({ placed, day });
      }
      const best = cheapest.get(index);
      if (!best || placed.least[days]! < best.least[days]!) cheapest.set(index, placed);
    }
    const served = new Set(first.map(({ placed }) => placed));
    for (const placed of cheapest.values())
      if (!served.has(placed) && Number.isFinite(placed.costs()[days]!)) first.push({ placed, day: days });
    return first;
  }

  #remember(meals: Optimum["meals"]): void {
    this.#served.clear();
    for (const { placed, day, reduced } of meals) {
      if (reduced > nearlyServed) continue;
      const known = this.#served.get(placed.column) ?? new Set<number>();
      this.#served.set(placed.column, known.add(mealKey(placed, day)));
    }
  }

  #build(model: LinearModel, supposition: Supposition): { placed: Placed[]; told: ToldApart } {
    const { problem } = this.#prepared;
    const kitchen = this.#kitchen;
    const exchange = kitchen.exchange(supposition.vents);
    const ethylene = ethyleneColumns(model, kitchen, supposition);
    const shared = this.#sharedRows(model);
    const bounded = problem.lots.filter((lot) => !isFree(lot));
    const told = this.#toldApart(model, supposition, bounded.length === problem.lots.length);
    const placed = bounded.flatMap((lot) =>
      this.#lots.build(model, lot, this.#air.ranges(supposition, lot.index), told, shared),
    );
    const portions = problem.lots.map((lot) => lot.portions);
    told.axes.forEach((axis, which) => {
      axisRows(model, which, axis, placed, portions);
    });
    smellRows(model, this.#prepared, kitchen, placed);
    emissionRows(model, kitchen, exchange, this.#air.windows, ethylene, placed);
    // What lies outside the programme may give off what is asked for here.
    const whole = bounded.length === problem.lots.length;
    if (whole) hasteRows(model, kitchen, exchange, placed);
    return { placed, told };
  }

  /** Portions at the table by day, some at a price, and litres in every place. */
  #sharedRows(model: LinearModel): SharedRows {
    const { problem, table, pace } = this.#prepared;
    return {
      table: table.map((places) => {
        const ahead = model.column(pace.cost, Math.max(0, places - pace.portions));
        return model.row(Number.NEGATIVE_INFINITY, Math.min(places, pace.portions), [[ahead, -1]]);
      }),
      room: problem.places.map(({ place }) => {
        const over = model.column(weights.overflowLitre);
        return model.row(Number.NEGATIVE_INFINITY, place.litres + roundingLitres, [[over, -1]]);
      }),
    };
  }

  /** Options of the air of every stretch and box, with what must hold under each. */
  #toldApart(model: LinearModel, supposition: Supposition, whole: boolean): ToldApart {
    const [kitchen, air, driest, stretches] = [this.#kitchen, this.#air, this.#driest, this.#stretches];
    const cells = stretches.map((stretch, which) => this.#cells.ethyleneIn(which, stretch, supposition));
    const densities = this.#cells.density.map((_, box) => this.#cells.densityIn(box, supposition));
    const vapour = densityColumns(model, supposition);
    const ofEthylene = cells.map((options, which) => ({
      shares: shareColumns(model, options),
      options: options.map((option) =>
        ethyleneConditions(kitchen, supposition, air.windows, stretches[which]!, option),
      ),
    }));
    const ofVapour = densities.map((options, box) => {
      const shares = shareColumns(model, options);
      return {
        shares,
        options: vapourConditions(
          model,
          kitchen,
          air,
          driest,
          supposition,
          box,
          options,
          shares,
          vapour,
          whole,
        ),
      };
    });
    stretches.forEach(({ box }, which) => {
      ventRows(model, cells[which]!, ofEthylene[which]!, densities[box]!, ofVapour[box]!);
    });
    const axes = [...ofEthylene, ...ofVapour];
    return { supposition, stretches, cells, densities, axes, airNumber: this.#airNumber };
  }

  /** Tells the air apart further where a relaxation lies between options. Says whether anything was. */
  refine({ shares }: Solved): boolean {
    const count = this.#stretches.length;
    return this.#cells.refine(shares.slice(0, count), shares.slice(count));
  }

  /** Ethylene that what is used makes at the least, no less than supposed. */
  #ethyleneOf(used: Solved["used"], { vents, leastEthylene }: Supposition): Float64Array[] {
    const { size, neighbour, behind } = this.#kitchen;
    const { windows } = this.#air;
    const { most } = this.#kitchen.exchange(vents);
    const always = leastEthylene[0]!.map((_, box) =>
      Math.min(...leastEthylene.map((levels) => levels[box]!)),
    );
    return [...windows, 0].map((from, window) => {
      const to = windows[window + 1] ?? Number.POSITIVE_INFINITY;
      const found = (leastEthylene[window] ?? always).slice();
      for (let box = 0; box < size; box++) {
        const emission = used.reduce(
          (sum, { column, portions }) =>
            sum + (portions * leastEmission(column, behind[box]!, from, to)) / column.way.lot.portions,
          0,
        );
        found[box] = Math.max(found[box]!, found[neighbour[box]!]! + emission / most[box]!);
      }
      return found;
    });
  }
}
