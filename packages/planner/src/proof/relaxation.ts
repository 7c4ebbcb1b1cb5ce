import type { Highs } from "highs";
import { roundingLitres } from "../rules/capacity.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import type { Column, Columns } from "./columns.js";
import { emissionRows, ethyleneColumns, hasteRows } from "./ethyleneRows.js";
import { leastEmission } from "./given.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import { type Entry, LinearModel } from "./linearModel.js";
import { LotRows } from "./lotRows.js";
import type { Placed } from "./placed.js";
import type { RootAir } from "./rootAir.js";
import { smellRows } from "./smellRows.js";
import { StretchPlanes, stretchesOf } from "./stretchPlanes.js";
import { contradicts, type Supposition } from "./supposition.js";
import { driestSurfaces, vapourRows } from "./vapourRows.js";
import { isFree } from "./ways.js";

type Model = ReturnType<Highs["createModel"]>;

/** The relaxation solved under a supposition. */
export interface Solved {
  /** Least objective [g]; Infinity where nothing satisfies the supposition. */
  readonly value: number;
  /** Portions by column, those with any. */
  readonly used: readonly { readonly column: Column; readonly portions: number }[];
  /** Ethylene [µL/L] of each box at the least with what is used, by window; last, at all times. */
  readonly ethylene: readonly Float64Array[];
}

const impossible: Solved = { value: Number.POSITIVE_INFINITY, used: [], ethylene: [] };

/** Portions below which the solver's rounding is seen, not a choice. */
const leastPortions = 1e-6;

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
  readonly #driest: readonly number[];
  #model: Model | undefined;

  constructor(highs: Highs, prepared: Prepared, kitchen: KitchenBoxes, air: RootAir, columns: Columns) {
    const { household } = prepared.problem;
    this.#highs = highs;
    this.#prepared = prepared;
    this.#kitchen = kitchen;
    this.#air = air;
    const planes = new StretchPlanes(columns, household.days);
    this.#lots = new LotRows(columns, planes, stretchesOf(kitchen), household);
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
    const placed = this.#build(model, supposition);
    const solver = this.#solver(model);
    solver.run();
    const { optimal, infeasible } = this.#highs.constants.modelStatus;
    const status = solver.getModelStatus();
    if (status === infeasible) return impossible;
    if (status !== optimal) throw new Error(`The solver ended with status ${status} instead of an optimum.`);
    const value = Number(solver.info.get("objective_function_value"));
    const { colValue } = solver.getSolution();
    const used = placed.flatMap(({ column, portions }) =>
      colValue[portions]! > leastPortions ? [{ column, portions: colValue[portions]! }] : [],
    );
    return {
      value: value - solverError * Math.abs(value),
      used,
      ethylene: this.#ethyleneOf(used, supposition),
    };
  }

  #solver({ data }: LinearModel): Model {
    if (this.#model) this.#model.passModel(data);
    else this.#model = this.#highs.createModel(data);
    this.#model.options.set("output_flag", false);
    return this.#model;
  }

  #build(model: LinearModel, supposition: Supposition): Placed[] {
    const { problem, table, pace } = this.#prepared;
    const kitchen = this.#kitchen;
    const exchange = kitchen.exchange(supposition.vents);
    const ethylene = ethyleneColumns(model, kitchen, supposition);
    const shared = { table: table.map((): Entry[] => []), room: problem.places.map((): Entry[] => []) };
    const most = this.#air.mostEthylene(exchange);
    const bounded = problem.lots.filter((lot) => !isFree(lot));
    const placed = bounded.flatMap((lot) =>
      this.#lots.build(
        model,
        lot,
        this.#air.ranges(supposition, lot.index),
        supposition,
        most,
        ethylene.at(-2)!,
        shared,
      ),
    );
    for (const [day, entries] of shared.table.entries()) {
      const ahead = model.column(pace.cost);
      model.row(Number.NEGATIVE_INFINITY, table[day]!, entries);
      model.row(Number.NEGATIVE_INFINITY, pace.portions, [...entries, [ahead, -1]]);
    }
    for (const [place, entries] of shared.room.entries()) {
      const over = model.column(weights.overflowLitre);
      const litres = problem.places[place]!.place.litres + roundingLitres;
      model.row(Number.NEGATIVE_INFINITY, litres, [...entries, [over, -1]]);
    }
    smellRows(model, this.#prepared, kitchen, placed);
    emissionRows(model, kitchen, exchange, this.#air.windows, ethylene, placed);
    // What lies outside the programme may give off what is asked for here.
    const whole = bounded.length === problem.lots.length;
    if (whole) hasteRows(model, kitchen, exchange, placed);
    vapourRows(model, kitchen, this.#air, this.#driest, supposition, placed, whole);
    return placed;
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
