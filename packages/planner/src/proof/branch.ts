import { ventSettings } from "../problem/kitchen.js";
import type { Columns } from "./columns.js";
import type { KitchenBoxes } from "./kitchenBounds.js";
import type { Solved } from "./relaxation.js";
import type { RootAir, Supposition } from "./supposition.js";

/** Two or more suppositions that together leave nothing of one out, and how much the value would rise if each were as tight as it could be [g]. */
interface Split {
  readonly parts: readonly Supposition[];
  readonly promise: number;
}

/** What a box's air, as what is used makes it, must differ by from what is supposed to be worth a split, as a share. */
const leastDifference = 0.02;

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
    (globalThis as any).__log?.(splits.map((one) => (one as any).name + " " + one.promise.toFixed(1)).join("; "), "used", solved.used.map(({column, portions}) => column.way.lot.commodity.id + " " + portions.toFixed(1) + " " + column.way.programme.stays.map(({place,wrap})=>this.#kitchen.problem.places[place]!.place.id+"/"+wrap).join(">")).join(", "));
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

  #byEthylene(supposition: Supposition, solved: Solved): Split[] {
    const { size, behind } = this.#kitchen;
    return supposition.leastEthylene.flatMap((levels, window) =>
      Array.from({ length: size }, (_, box) => box).flatMap((box): Split[] => {
        const low = levels[box]!;
        const made = solved.ethylene[window]![box]!;
        if (made < low * (1 + leastDifference)) return [];
        const raisedTo = (level: number): Supposition => this.#raised(supposition, window, box, level);
        const promise = this.#rise(solved, supposition, raisedTo(made), behind[box]!);
        const level = Math.sqrt(low * made);
        const lowered: Supposition = {
          ...supposition,
          leastAtMost: supposition.leastAtMost.with(
            window,
            withEntry(supposition.leastAtMost[window]!, box, level),
          ),
        };
        return [{ name: `eth w${window} b${box} ${low.toFixed(3)}<${made.toFixed(3)}`, promise, parts: [lowered, raisedTo(level)] } as any];
      }),
    );
  }

  /** At least a level in a box, and so in all that breathe with it. */
  #raised(supposition: Supposition, window: number, box: number, level: number): Supposition {
    const levels = supposition.leastEthylene[window]!.slice();
    for (const one of this.#kitchen.behind[box]!) levels[one] = Math.max(levels[one]!, level);
    return { ...supposition, leastEthylene: supposition.leastEthylene.with(window, levels) };
  }

  #byDensity(supposition: Supposition, solved: Solved): Split[] {
    const { size } = this.#kitchen;
    return Array.from({ length: size }, (_, box) => box).flatMap((box): Split[] => {
      const most = supposition.mostDensity[box]!;
      const least = Math.max(this.#air.leastDensity[box]!, supposition.mostAtLeast[box]!);
      if (most < least * (1 + leastDifference)) return [];
      const level = 0.5 * (most + least);
      const drier: Supposition = { ...supposition, mostDensity: withEntry(supposition.mostDensity, box, level) };
      const wetter: Supposition = { ...supposition, mostAtLeast: withEntry(supposition.mostAtLeast, box, level) };
      // Only a guess of what it brings: half of what the driest air would.
      const driest = { ...supposition, mostDensity: withEntry(supposition.mostDensity, box, least) };
      const promise = 0.5 * this.#rise(solved, supposition, driest, new Set([box]));
      return [{ name: `dens b${box} ${(least*1000).toFixed(1)}..${(most*1000).toFixed(1)}`, promise, parts: [drier, wetter] } as any];
    });
  }

  #byVents(supposition: Supposition, solved: Solved): Split[] {
    const { problem } = this.#kitchen;
    return supposition.vents.flatMap((allowed, vent): Split[] => {
      if (allowed.length < 2) return [];
      const parts = ventSettings
        .filter((setting) => allowed.includes(setting))
        .map((setting) => ({ ...supposition, vents: supposition.vents.with(vent, [setting]) }));
      const box = this.#kitchen.boxOf(problem.vents[vent]!);
      const rises = parts.map((part) =>
        this.#rise(solved, supposition, part, this.#kitchen.behind[box]!),
      );
      return [{ name: `vent ${vent}`, promise: Math.min(...rises), parts } as any];
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
