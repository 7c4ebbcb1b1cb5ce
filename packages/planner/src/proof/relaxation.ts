import { type AirRanges, litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import type { Highs } from "highs";
import { dailyLimit } from "../rules/portionsADay.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import type { Column, Columns } from "./columns.js";
import { baseCosts, type CostsByLevel, costsByLevel, flatCosts, slopeOn } from "./ethylenePlane.js";
import { leastEmission, leastVapour, mostEmission, mostVapour } from "./given.js";
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
  /** Portions by column, those with any, and what they cost there [g]. */
  readonly used: readonly {
    readonly column: Column;
    readonly portions: number;
    readonly eaten: readonly { readonly day: number; readonly portions: number }[];
    readonly cost: number;
  }[];
  /** Ethylene [µL/L] of each box at the least, by window, with what is used. */
  readonly ethylene: readonly Float64Array[];
}

type Entries = (readonly [column: number, value: number])[];

/** A stretch of air: a box that breathes with the room, with all behind it. Nothing in it meets less ethylene than that box. */
interface Stretch {
  readonly box: number;
  readonly boxes: ReadonlySet<number>;
}

/**
 * The relaxation as a linear programme. Portions of every lot go to columns (ways through places, first ready on a day), and from there to days or are left; portions a day, one lot's
 * limit a day, the litres of every place on the first day and the smells that meet then are as in the plan. Splits cost nothing but a share of their effort. Each column pays its
 * least costs in the air supposed, and what is used may not give off more ethylene or vapour than the air supposed allows. What lies in one stretch of air also pays for the ethylene
 * there above the least: the product of portions and ethylene is held from below by its McCormick envelope (McCormick 1976, Mathematical Programming 10:147–175; from memory).
 */
export class Relaxation {
  readonly #highs: Highs;
  readonly #prepared: Prepared;
  readonly #kitchen: KitchenBoxes;
  readonly #air: RootAir;
  readonly #columns: Columns;
  readonly #stretches: readonly Stretch[];
  readonly #known = new Map<string, CostsByLevel>();
  #model: Model | undefined;
  #placed: Placed[] = [];
  /** By box: below this density [kg/m³] everything in it or behind it only adds vapour. */
  readonly #driest: number[];

  constructor(highs: Highs, prepared: Prepared, kitchen: KitchenBoxes, air: RootAir, columns: Columns) {
    this.#highs = highs;
    this.#prepared = prepared;
    this.#kitchen = kitchen;
    this.#air = air;
    this.#columns = columns;
    this.#stretches = kitchen.neighbour.flatMap((next, box) =>
      next === kitchen.size ? [{ box, boxes: kitchen.behind[box]! }] : [],
    );
    this.#driest = kitchen.behind.map((boxes) => driest(columns.all, boxes));
  }

  dispose(): void {
    this.#model?.dispose();
  }

  solve(supposition: Supposition): Solved {
    const none = { value: Number.POSITIVE_INFINITY, used: [], ethylene: [] };
    if (contradicts(supposition)) return none;
    const model = new LinearModel();
    this.#placed = [];
    this.#build(model, supposition);
    const { data } = model;
    if (this.#model) {
      const basis = this.#model.getBasis();
      this.#model.passModel(data);
      try { this.#model.setBasis(basis); } catch {}
    } else {
      this.#model = this.#highs.createModel(data);
      this.#model.options.set("output_flag", false);
    }
    this.#model.run();
    if (this.#model.getModelStatus() !== 7) return none;
    const value = Number(this.#model.info.get("objective_function_value"));
    const { colValue } = this.#model.getSolution();
    const used = this.#placed.flatMap(({ column, portions, eaten }) => {
      if (!(colValue[portions]! > 1e-6)) return [];
      let cost = colValue[portions]! * model.costs[portions]!;
      for (const { index } of eaten) cost += colValue[index]! * model.costs[index]!;
      return [
        {
          column,
          portions: colValue[portions]!,
          eaten: eaten.map(({ day, index }) => ({ day, portions: colValue[index]! })),
          cost,
        },
      ];
    });
    return { value, used, ethylene: this.#ethyleneOf(used, supposition) };
  }

  #build(model: LinearModel, supposition: Supposition): void {
    const { problem, table, pace } = this.#prepared;
    const atTable: Entries[] = table.map(() => []);
    const room: Entries[] = problem.places.map(() => []);
    const ethylene = this.#ethyleneColumns(model, supposition);
    for (const lot of problem.lots) {
      this.#buildLot(model, lot.index, this.#air.ranges(supposition, lot.index), ethylene, supposition, atTable, room);
    }
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
    this.#buildEthylene(model, ethylene, supposition);
    this.#buildVapour(model, supposition);
    this.#buildHaste(model, supposition);
  }

  /**
   * Fruit that is to be ripe sooner than the room's ethylene makes it needs that of others: what is in its box and in those it breathes with must be able to give as much off.
   */
  #buildHaste(model: LinearModel, { vents }: Supposition): void {
    const { size, neighbour, behind, problem } = this.#kitchen;
    const { least } = this.#kitchen.exchange(vents);
    const base = problem.kitchen.room.ethylene;
    // Ethylene of a box at the most, as entries: given off in it or behind it, over its least exchange, and so on to the room.
    const made = (box: number, but: number): Entries => {
      const entries: Entries = [];
      for (const { column, portions } of this.#placed) {
        if (column.way.lot.index === but) continue;
        let ethylene = 0;
        for (let one = box; one < size; one = neighbour[one]!) {
          ethylene += mostEmission(column, behind[one]!) / least[one]!;
        }
        if (ethylene > 0) entries.push([portions, ethylene / column.way.lot.portions]);
      }
      return entries;
    };
    const groups = new Map<string, { readonly entries: Entries; readonly lot: number; readonly box: number }>();
    for (const { column, portions } of this.#placed) {
      const box = column.way.boxes[0]!;
      const lot = column.way.lot.index;
      if (!(column.needs > base * (1 + 1e-6))) continue;
      const key = `${lot} ${box} ${column.needs}`;
      const group = groups.get(key) ?? { entries: [], lot, box };
      groups.set(key, group);
      group.entries.push([portions, -(column.needs - base) / column.way.lot.portions]);
    }
    for (const { entries, box, lot } of groups.values()) {
      model.row(0, Number.POSITIVE_INFINITY, [...made(box, lot), ...entries]);
    }
  }

  /** By window and box; last, the least of all windows but the first. */
  #ethyleneColumns(model: LinearModel, { leastEthylene, leastAtMost }: Supposition): number[][] {
    const room = this.#prepared.problem.kitchen.room.ethylene;
    const byWindow = leastEthylene.map((least, window) =>
      Array.from({ length: this.#kitchen.size + 1 }, (_, box) =>
        box === this.#kitchen.size
          ? model.column(0, room, room)
          : model.column(0, leastAtMost[window]![box]!, least[box]!),
      ),
    );
    const later = byWindow[0]!.map(() => model.column(0));
    return [...byWindow, later];
  }

  #buildLot(
    model: LinearModel,
    index: number,
    ranges: AirRanges,
    ethylene: readonly number[][],
    supposition: Supposition,
    atTable: Entries[],
    room: Entries[],
  ): void {
    const { problem } = this.#prepared;
    const lot = problem.lots[index]!;
    const { seasoning } = lot.commodity.household;
    const all: Entries = [];
    const onDay: Entries[] = atTable.map(() => []);
    const own = this.#columns.all.filter(({ way }) => way.lot === lot);
    const planes = this.#stretches.map((stretch) => this.#plane(own, stretch, ranges, supposition));
    const placedIn: Placed[][] = this.#stretches.map(() => []);
    for (const column of own) {
      const where = this.#stretches.findIndex(({ boxes }) => column.way.boxes.length === 1 && boxes.has(column.way.boxes[0]!));
      const costs = this.#costsOf(column, ranges, where < 0 ? undefined : planes[where]);
      const left = costs?.[atTable.length] ?? 0;
      const portions = model.column(left, costs ? lot.portions : 0);
      const eaten: { day: number; index: number }[] = [];
      const flow: Entries = [[portions, -1]];
      for (let day = Math.min(column.readyDay, atTable.length); day < atTable.length; day++) {
        const cost = costs?.[day] ?? Number.POSITIVE_INFINITY;
        const can = Number.isFinite(cost);
        const meal = model.column(can ? cost - left : 0, can ? Number.POSITIVE_INFINITY : 0);
        eaten.push({ day, index: meal });
        flow.push([meal, 1]);
        onDay[day]!.push([meal, 1]);
        if (!seasoning) atTable[day]!.push([meal, 1]);
      }
      if (eaten.length > 0) model.row(Number.NEGATIVE_INFINITY, 0, flow);
      all.push([portions, 1]);
      room[column.way.programme.stays[0]!.place]!.push([portions, column.way.litres[0]! / lot.portions]);
      const placed = { column, portions, eaten };
      this.#placed.push(placed);
      if (where >= 0) placedIn[where]!.push(placed);
    }
    model.row(lot.portions, lot.portions, all);
    const limit = dailyLimit(lot, problem.household);
    for (const entries of onDay) {
      if (entries.length > 0) model.row(Number.NEGATIVE_INFINITY, limit, entries);
    }
    this.#stretches.forEach((stretch, which) => {
      const plane = planes[which];
      if (plane) this.#buildProducts(model, lot.portions, placedIn[which]!, plane, ethylene.at(-1)![stretch.box]!, atTable.length);
    });
  }

  #costsOf(column: Column, ranges: AirRanges, plane: Plane | undefined): Float64Array | undefined {
    if (plane) return plane.bases.get(column);
    const found = this.#columns.costs(column, ranges);
    return found && flatCosts(found);
  }

  /** What the ethylene of a stretch above its least, from the second window on, costs a lot in it. */
  #plane(own: readonly Column[], { box, boxes }: Stretch, ranges: AirRanges, { leastEthylene, leastAtMost }: Supposition): Plane | undefined {
    const inside = own.filter(({ way }) => way.boxes.length === 1 && boxes.has(way.boxes[0]!));
    if (inside.length === 0 || leastEthylene.length < 2) return undefined;
    const later = leastEthylene.slice(1).map((levels) => levels[box]!);
    const least = Math.min(...later);
    const most = Math.min(ranges.mostEthylene[box]!, ...leastAtMost.slice(1).map((levels) => levels[box]!));
    const air = `${[...boxes].map((one) => [one, leastEthylene.map((levels) => levels[one]), ranges.mostEthylene[one], ranges.mostDensity[one], ranges.leastResistance[one], ranges.mostResistance[one]])}`;
    const known = inside.map((column) => {
      const key = `${this.#columns.all.indexOf(column)} ${least} ${most} ${air}`;
      const found = this.#known.get(key) ?? costsByLevel(this.#columns, column, ranges, boxes, least, most);
      this.#known.set(key, found);
      return found;
    });
    // Slopes of the column that is cheapest at the least ethylene, day by day.
    const slopes = Float64Array.from({ length: this.#prepared.problem.household.days + 1 }, (_, day) => {
      let best: CostsByLevel | undefined;
      for (const one of known) {
        const cost = one.costs[0]?.[day] ?? Number.POSITIVE_INFINITY;
        if (cost < (best?.costs[0]?.[day] ?? Number.POSITIVE_INFINITY)) best = one;
      }
      return best ? slopeOn(best, day) : 0;
    });
    const bases = new Map(inside.map((column, which) => [column, baseCosts(known[which]!, slopes)]));
    return { slopes, bases, least, most };
  }

  /** Products of portions and of a level above its least, by day; together at least what McCormick allows. */
  #buildProducts(
    model: LinearModel,
    lotPortions: number,
    placed: readonly Placed[],
    { slopes, least, most }: Plane,
    ethylene: number,
    days: number,
  ): void {
    const width = most - least;
    if (!(width > 0) || slopes.every((slope) => slope === 0)) return;
    const together: Entries = [];
    let leftEntries: Entries = [];
    for (let day = 0; day <= days; day++) {
      const product = model.column(slopes[day]!);
      together.push([product, 1]);
      const meals: Entries = placed.flatMap(({ eaten }) =>
        eaten.filter((meal) => meal.day === day).map(({ index }) => [index, -width] as const),
      );
      if (day < days) {
        model.row(Number.NEGATIVE_INFINITY, 0, [[product, 1], ...meals]);
        leftEntries = [...leftEntries, ...meals.map(([index, value]) => [index, -value] as const)];
      } else {
        model.row(Number.NEGATIVE_INFINITY, 0, [
          [product, 1],
          ...placed.map(({ portions }) => [portions, -width] as const),
          ...leftEntries,
        ]);
      }
    }
    // products ≥ width · portions + lot · (level − most)
    model.row(-lotPortions * most, Number.POSITIVE_INFINITY, [
      ...together,
      ...placed.map(({ portions }) => [portions, -width] as const),
      [ethylene, -lotPortions],
    ]);
  }

  /** exchange · (ethylene of the box − that of the neighbour) ≥ what is given off in it and behind it. */
  #buildEthylene(model: LinearModel, ethylene: readonly number[][], { vents }: Supposition): void {
    const { size, neighbour, behind } = this.#kitchen;
    const { windows } = this.#air;
    const { most } = this.#kitchen.exchange(vents);
    const spans = windows.map((from, window) => [from, windows[window + 1] ?? Number.POSITIVE_INFINITY] as const);
    [...spans, [windows[1] ?? 0, Number.POSITIVE_INFINITY] as const].forEach(([from, to], window) => {
      const columns = ethylene[window]!;
      for (let box = 0; box < size; box++) {
        const entries: Entries = [
          [columns[box]!, -most[box]!],
          [columns[neighbour[box]!]!, most[box]!],
        ];
        for (const { column, portions } of this.#placed) {
          const emission = leastEmission(column, behind[box]!, from, to);
          if (emission > 0) entries.push([portions, emission / column.way.lot.portions]);
        }
        model.row(Number.NEGATIVE_INFINITY, 0, entries);
      }
    });
  }

  /** What is in a box must not give off more vapour than its supposed most density allows, nor too little for the density it is supposed to reach. */
  #buildVapour(model: LinearModel, { vents, mostDensity, mostAtLeast }: Supposition): void {
    const { size, behind, neighbour, optimist } = this.#kitchen;
    const { tree } = optimist;
    const exchange = this.#kitchen.exchange(vents);
    const grams = (density: number): number => density * 1000;
    for (let box = 0; box < size; box++) {
      const coil = (density: number): number =>
        tree.coilExchange[box]! *
        litresPerHourInCubicMetrePerSecond *
        Math.max(0, grams(density) - grams(tree.coilDensity[box]!));
      const over = (of: (column: Column) => { conductance: number; supply: number }, density: number): Entries =>
        this.#placed.flatMap(({ column, portions }) => {
          const { conductance, supply } = of(column);
          const given = (grams(supply) - grams(density) * conductance) * litresPerHourInCubicMetrePerSecond;
          return given === 0 ? [] : [[portions, given / column.way.lot.portions] as const];
        });
      const next = neighbour[box]!;
      const most = mostDensity[box]!;
      const around = this.#air.leastDensity[next]!;
      const carried = most >= around ? exchange.most[box]! : exchange.least[box]!;
      const free = most > this.#driest[box]!;
      model.row(
        Number.NEGATIVE_INFINITY,
        free ? Number.POSITIVE_INFINITY : carried * (grams(most) - grams(around)) + coil(most),
        free ? [] : over((column) => leastVapour(column, box), most),
      );
      const level = mostAtLeast[box]!;
      const wetter = mostDensity[next]!;
      const slowly = level >= wetter ? exchange.least[box]! : exchange.most[box]!;
      const asked = level > 0 && level <= this.#driest[box]!;
      model.row(
        asked ? slowly * (grams(level) - grams(wetter)) + coil(level) : Number.NEGATIVE_INFINITY,
        Number.POSITIVE_INFINITY,
        asked ? over((column) => mostVapour(column, behind[box]!), level) : [],
      );
    }
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

interface Plane {
  /** By day, with what is left over last [g per µL/L]. */
  readonly slopes: Float64Array;
  readonly bases: ReadonlyMap<Column, Float64Array | undefined>;
  /** Levels [µL/L] between which it holds. */
  readonly least: number;
  readonly most: number;
}

const contradicts = ({ leastEthylene, leastAtMost, mostDensity, mostAtLeast }: Supposition): boolean =>
  leastEthylene.some((least, window) => least.some((level, box) => level > leastAtMost[window]![box]!)) ||
  mostAtLeast.some((level, box) => level > mostDensity[box]!);

function driest(all: readonly Column[], boxes: ReadonlySet<number>): number {
  let least = Number.POSITIVE_INFINITY;
  for (const column of all) {
    for (const { way } of column.members) {
      for (const given of way.gives) {
        if (boxes.has(given.box)) least = Math.min(least, given.vapour.density);
      }
    }
  }
  return least;
}
