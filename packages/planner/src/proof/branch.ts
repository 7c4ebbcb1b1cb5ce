import { ventSettings } from "../problem/kitchen.js";
import { leastToldApart } from "./cells.js";
import type { Columns } from "./columns.js";
import { mostVapour } from "./given.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { Solved } from "./relaxation.js";
import type { RootAir } from "./rootAir.js";
import type { Supposition } from "./supposition.js";

/** Two or more suppositions that together leave nothing of one out, and how much the value would rise if each were as tight as it could be [g]. */
interface Split {
  readonly parts: readonly Supposition[];
  readonly promise: number;
}

/** What a box's air, as what is used makes it, must differ by from what is supposed to be worth a split, as a share. */
const leastDifference = 0.02;

/** How far from what is supposed to what is used a split lies: near the latter, so that the branch the optimum is likely in gets most of the rise at once. */
const splitShare = 0.8;

/** Least rise [g] a split must promise. */
const leastPromise = 1e-3;

/** Finds the supposition whose looseness costs the bound most, and splits it. */
export class Brancher {
  readonly #kitchen: KitchenBoxes;
  readonly #air: RootAir;
  readonly #columns: Columns;

  constructor(kitchen: KitchenBoxes, air: RootAir, columns: Columns) {
    this.#kitchen = kitchen;
    this.#air = air;
    this.#columns = columns;
  }

  /** The most promising split; nothing when what is used makes the air that is supposed. */
  split(supposition: Supposition, solved: Solved): readonly Supposition[] | undefined {
    const splits = [
      ...this.#byEthylene(supposition, solved),
      ...this.#byDensity(supposition, solved),
      ...this.#byVents(supposition, solved),
    ];
    const best = splits.reduce<Split | undefined>(
      (most, one) => (most && most.promise >= one.promise ? most : one),
      undefined,
    );
    return best && best.promise > leastPromise ? best.parts : undefined;
  }

  /** How much dearer what is used would be in other air [g]: each lot at its least day by day. */
  #rise({ used }: Solved, from: Supposition, to: Supposition, boxes: ReadonlySet<number>): number {
    let rise = 0;
    for (const { column, portions } of used) {
      if (!column.way.boxes.some((box) => boxes.has(box))) continue;
      const now = this.#columns.costs(column, this.#air.ranges(from, column.way.lot.index));
      const then = this.#columns.costs(column, this.#air.ranges(to, column.way.lot.index));
      if (!now) continue;
      rise += portions * (then ? leastOf(then) - leastOf(now) : leastOf(now));
    }
    return rise;
  }

  /** For each window, and for all time together, which is one split where several would be needed. */
  #byEthylene(supposition: Supposition, solved: Solved): Split[] {
    const { size, behind } = this.#kitchen;
    const { leastEthylene, leastAtMost } = supposition;
    return leastAtMost.flatMap((caps, span) =>
      Array.from({ length: size }, (_, box) => box).flatMap((box): Split[] => {
        const windows = span < leastEthylene.length ? [span] : leastEthylene.map((_, window) => window);
        const low = Math.min(...windows.map((window) => leastEthylene[window]![box]!));
        const made = Math.min(solved.ethylene[span]![box]!, caps[box]!);
        const seen = Math.max(low, leastToldApart);
        if (made < seen * (1 + leastDifference)) return [];
        const raisedTo = (level: number): Supposition => this.#raised(supposition, windows, box, level);
        const promise = this.#rise(solved, supposition, raisedTo(made), behind[box]!);
        const level = seen ** (1 - splitShare) * made ** splitShare;
        const lowered = { ...supposition, leastAtMost: leastAtMost.with(span, withEntry(caps, box, level)) };
        return [{ promise, parts: [lowered, raisedTo(level)] }];
      }),
    );
  }

  /** At least a level in a box, and so in all that breathe with it. */
  #raised(supposition: Supposition, windows: readonly number[], box: number, level: number): Supposition {
    const leastEthylene = supposition.leastEthylene.map((levels, window) =>
      windows.includes(window)
        ? levels.map((now, one) => (this.#kitchen.behind[box]!.has(one) ? Math.max(now, level) : now))
        : levels,
    );
    return { ...supposition, leastEthylene };
  }

  #byDensity(supposition: Supposition, solved: Solved): Split[] {
    const { mostDensity } = supposition;
    return Array.from({ length: this.#kitchen.size }, (_, box) => box).flatMap((box): Split[] => {
      const most = mostDensity[box]!;
      const reached = Math.max(this.#reached(supposition, solved, box), supposition.mostAtLeast[box]!);
      if (most < reached * (1 + leastDifference)) return [];
      const drierThan = (level: number): Supposition => ({
        ...supposition,
        mostDensity: withEntry(mostDensity, box, level),
      });
      const level = most + splitShare * (reached - most);
      const wetter: Supposition = {
        ...supposition,
        mostAtLeast: withEntry(supposition.mostAtLeast, box, level),
      };
      const promise = this.#rise(solved, supposition, drierThan(reached), new Set([box]));
      return [{ promise, parts: [drierThan(level), wetter] }];
    });
  }

  /** Density [kg/m³] that a box could reach with all that is ever used in it or behind it, around it the air at its dampest. */
  #reached({ vents, mostDensity }: Supposition, { used }: Solved, box: number): number {
    const { behind, neighbour } = this.#kitchen;
    const exchange = this.#kitchen.exchange(vents);
    let conductance = 0;
    let density = 0;
    for (const { column, portions } of used) {
      const given = mostVapour(column, behind[box]!);
      conductance += (given.conductance * portions) / column.way.lot.portions;
      if (given.conductance > 0) density = Math.max(density, given.supply / given.conductance);
    }
    const around = mostDensity[neighbour[box]!]!;
    const settled = [exchange.least[box]!, exchange.most[box]!].map((litres) =>
      this.#air.settled(box, around, { conductance, density }, litres),
    );
    return Math.min(Math.max(...settled), mostDensity[box]!);
  }

  #byVents(supposition: Supposition, solved: Solved): Split[] {
    const { problem } = this.#kitchen;
    return supposition.vents.flatMap((allowed, vent): Split[] => {
      if (allowed.length < 2) return [];
      const parts = ventSettings
        .filter((setting) => allowed.includes(setting))
        .map((setting) => ({ ...supposition, vents: supposition.vents.with(vent, [setting]) }));
      const box = this.#kitchen.boxOf(problem.vents[vent]!);
      const rises = parts.map((part) => this.#rise(solved, supposition, part, this.#kitchen.behind[box]!));
      return [{ promise: Math.min(...rises), parts }];
    });
  }
}

const leastOf = ({ onDay, left }: { onDay: Float64Array; left: number }): number =>
  onDay.reduce((least, cost) => Math.min(least, cost), left);

function withEntry(values: Float64Array, index: number, value: number): Float64Array {
  const copy = values.slice();
  copy[index] = value;
  return copy;
}
