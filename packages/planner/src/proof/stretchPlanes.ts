import type { Column, Columns } from "./columns.js";
import { baseCosts, type CostsByLevel, costsByLevel, slopeOn } from "./ethylenePlane.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { LotAir } from "./lotAir.js";
import type { Supposition } from "./supposition.js";

/** A stretch of air: a box that breathes with the room, with all behind it. Nothing in it meets less ethylene than that box holds. */
export interface Stretch {
  readonly box: number;
  readonly boxes: ReadonlySet<number>;
}

export const stretchesOf = ({ neighbour, behind, size }: KitchenBoxes): Stretch[] =>
  neighbour.flatMap((next, box) => (next === size ? [{ box, boxes: behind[box]! }] : []));

/** Whether a column lies in one stretch all the time. */
export const liesIn = ({ way }: Column, { boxes }: Stretch): boolean =>
  way.boxes.length === 1 && boxes.has(way.boxes[0]!);

/** What ethylene above the least costs a lot in a stretch of air, from the second window on. */
export interface Plane {
  /** By day, with what is left over last [g per µL/L]. */
  readonly slopes: Float64Array;
  /** Costs by day at the least ethylene that go with these slopes; nothing where a column cannot be. */
  readonly bases: ReadonlyMap<Column, Float64Array | undefined>;
  /** Levels [µL/L] between which it holds. */
  readonly least: number;
  readonly most: number;
}

/** Finds planes, and remembers the costs they are made of. */
export class StretchPlanes {
  readonly #columns: Columns;
  readonly #days: number;
  readonly #known = new Map<Column, Map<string, CostsByLevel>>();

  constructor(columns: Columns, days: number) {
    this.#columns = columns;
    this.#days = days;
  }

  /**
   * The plane of a lot's columns in a stretch; undefined where it has none there, or where there is one window only.
   *
   * @param mostEthylene of each box, with everything in it [µL/L]
   */
  plane(
    own: readonly Column[],
    { box, boxes }: Stretch,
    ranges: LotAir,
    { leastEthylene, leastAtMost }: Supposition,
    mostEthylene: Float64Array,
  ): Plane | undefined {
    if (own.length === 0 || leastEthylene.length < 2) return undefined;
    const least = Math.min(...leastEthylene.slice(1).map((levels) => levels[box]!));
    const most = Math.min(mostEthylene[box]!, ...leastAtMost.slice(1, -1).map((levels) => levels[box]!));
    const air = `${least} ${most} ${airKey(boxes, ranges)}`;
    const known = own.map((column) =>
      this.#costs(column, air, () => costsByLevel(this.#columns, column, ranges, boxes, least, most)),
    );
    const slopes = Float64Array.from({ length: this.#days + 1 }, (_, day) => slopeOfCheapest(known, day));
    const bases = new Map(own.map((column, which) => [column, baseCosts(known[which]!, slopes)]));
    return { slopes, bases, least, most };
  }

  #costs(column: Column, air: string, find: () => CostsByLevel): CostsByLevel {
    const known = this.#known.get(column) ?? new Map<string, CostsByLevel>();
    this.#known.set(column, known);
    const costs = known.get(air) ?? find();
    known.set(air, costs);
    return costs;
  }
}

const airKey = (boxes: ReadonlySet<number>, air: LotAir): string =>
  [...boxes]
    .map((box) =>
      [
        ...air.leastEthylene.map((levels) => levels[box]),
        air.mostEthylene[box],
        air.mostWithItsParts[box],
        air.mostDensity[box],
        air.leastResistance[box],
        air.mostResistance[box],
      ].join(" "),
    )
    .join("; ");

/** Slope of the column that is cheapest on a day at the least ethylene: the plane is to be close where the optimum may lie. */
function slopeOfCheapest(known: readonly CostsByLevel[], day: number): number {
  let best: CostsByLevel | undefined;
  for (const one of known) {
    const cost = one.costs[0]?.[day] ?? Number.POSITIVE_INFINITY;
    if (cost < (best?.costs[0]?.[day] ?? Number.POSITIVE_INFINITY)) best = one;
  }
  return best ? slopeOn(best, day) : 0;
}
