import { type GivenInStay, type GivenVapour, litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import type { BoxExchange, KitchenBoxes } from "./kitchenBoxes.js";
import type { LotAir } from "./lotAir.js";
import type { Supposition } from "./supposition.js";
import type { Way } from "./ways.js";

/** Days [d] on which windows begin in which the least ethylene of a box is told apart. Inferred: what ripens comes into the refrigerator in the first days, and then stays. */
export const windowsFor = (days: number): number[] => [0, 2, 4].filter((day) => day < days);

/** What holds in every branch. */
export class RootAir {
  readonly #kitchen: KitchenBoxes;
  readonly #ways: readonly (readonly Way[])[];
  readonly #emissions: readonly Float64Array[];
  readonly windows: readonly number[];
  readonly leastDensity: Float64Array;
  readonly mostDensity: Float64Array;

  constructor(kitchen: KitchenBoxes, ways: readonly (readonly Way[])[]) {
    this.#kitchen = kitchen;
    this.#ways = ways;
    this.#emissions = ways.map((ofLot) => this.#mostEmission(ofLot));
    this.windows = windowsFor(kitchen.problem.household.days);
    const { least, most } = this.#densities();
    this.leastDensity = least;
    this.mostDensity = most;
  }

  root(): Supposition {
    const { size, problem } = this.#kitchen;
    const room = problem.kitchen.room.ethylene;
    return {
      vents: this.#kitchen.everyVent(),
      leastEthylene: this.windows.map(() => new Float64Array(size + 1).fill(room)),
      leastAtMost: [...this.windows, 0].map(() => new Float64Array(size + 1).fill(Number.POSITIVE_INFINITY)),
      mostDensity: this.mostDensity,
      mostAtLeast: new Float64Array(size + 1),
    };
  }

  /** The air that a lot is followed in under a supposition. */
  ranges({ vents, leastEthylene, mostDensity }: Supposition, lot: number): LotAir {
    const { size, neighbour, problem } = this.#kitchen;
    const exchange = this.#kitchen.exchange(vents);
    const leastResistance = new Float64Array(size + 1);
    const mostResistance = new Float64Array(size + 1);
    for (let box = 0; box < size; box++) {
      leastResistance[box] = leastResistance[neighbour[box]!]! + 1 / exchange.most[box]!;
      mostResistance[box] = mostResistance[neighbour[box]!]! + 1 / exchange.least[box]!;
    }
    return {
      roomEthylene: problem.kitchen.room.ethylene,
      windows: this.windows,
      leastEthylene,
      mostEthylene: this.mostEthylene(exchange, lot),
      mostWithItsParts: this.mostEthylene(exchange),
      leastDensity: this.leastDensity,
      mostDensity,
      leastResistance,
      mostResistance,
    };
  }

  /** Ethylene [µL/L] of each box at the most: with everything that could be in it in it, one lot left out where told, and its air changing least. */
  mostEthylene({ least }: BoxExchange, but?: number): Float64Array {
    const { size, neighbour, problem } = this.#kitchen;
    const most = new Float64Array(size + 1).fill(problem.kitchen.room.ethylene);
    for (let box = 0; box < size; box++) {
      let emission = 0;
      this.#emissions.forEach((byBox, lot) => {
        if (lot !== but) emission += byBox[box]!;
      });
      most[box] = most[neighbour[box]!]! + emission / least[box]!;
    }
    return most;
  }

  /** Ethylene [µL/h] a lot gives off at the most into each box and those behind it. */
  #mostEmission(ways: readonly Way[]): Float64Array {
    const most = new Float64Array(this.#kitchen.size);
    for (const { gives } of ways) {
      for (const { box, arriving, ripe } of gives) {
        this.#kitchen.behind.forEach((boxes, one) => {
          if (boxes.has(box)) most[one] = Math.max(most[one]!, arriving, ripe);
        });
      }
    }
    return most;
  }

  /**
   * Densities between which each box's always lies: settled empty, or with everything in it and behind it that may give off vapour doing so at the highest density of any, or with everything that
   * may take it up doing so at the lowest; the air changing least or most. What gives at another density moves it less far, and so does less of it.
   */
  #densities(): { least: Float64Array; most: Float64Array } {
    const { size, neighbour, optimist } = this.#kitchen;
    const { tree } = optimist;
    const exchange = this.#kitchen.exchange(this.#kitchen.everyVent());
    const least = new Float64Array(size + 1).fill(tree.roomDensity);
    const most = new Float64Array(size + 1).fill(tree.roomDensity);
    const empty = { conductance: 0, density: 0 };
    for (let box = 0; box < size; box++) {
      const next = neighbour[box]!;
      const lowest = this.#taking(box, exchange);
      const highest = this.#giving(box);
      const settled = (around: number, loads: readonly GivenVapour[]): number[] =>
        [exchange.least[box]!, exchange.most[box]!].flatMap((litres) =>
          loads.map((load) => this.settled(box, around, load, litres)),
        );
      least[box] = Math.min(...settled(least[next]!, [lowest, empty]));
      most[box] = Math.max(...settled(most[next]!, [highest, empty]));
    }
    return { least, most };
  }

  /** What a box and those behind it may hold of each lot, added up by the way that has most of it. */
  #added(box: number, of: (given: GivenInStay) => number): number {
    return this.#ways.reduce((sum, ways) => {
      const here = ways.flatMap(({ gives }) =>
        gives.filter((given) => this.#kitchen.behind[box]!.has(given.box)),
      );
      return sum + here.reduce((most, given) => Math.max(most, of(given)), 0);
    }, 0);
  }

  #surfaces(box: number): number[] {
    return this.#ways.flatMap((ways) =>
      ways.flatMap(({ gives }) =>
        gives.flatMap((given) => (this.#kitchen.behind[box]!.has(given.box) ? [given.vapour.density] : [])),
      ),
    );
  }

  /** All lots in a box or behind it, each the way and the parts that give off most, at the highest density any of them gives off at. */
  #giving(box: number): GivenVapour {
    const density = this.#surfaces(box).reduce((most, one) => Math.max(most, one), 0);
    return { conductance: this.#added(box, ({ vapour }) => vapour.apart), density };
  }

  /**
   * The same at the lowest density of any, wraps as open as they are to water condensing in them. Water also condenses in a colder box behind: no more than its exchange carries there, at
   * no less than its saturation.
   */
  #taking(box: number, { most }: BoxExchange): GivenVapour {
    const { tree } = this.#kitchen.optimist;
    let conductance = this.#added(box, ({ taking }) => taking);
    let density = this.#surfaces(box).reduce((least, one) => Math.min(least, one), Number.MAX_VALUE);
    for (const one of this.#kitchen.behind[box]!) {
      if (one === box || tree.saturationDensity[one]! >= tree.saturationDensity[box]!) continue;
      conductance += most[one]! / litresPerHourInCubicMetrePerSecond;
      density = Math.min(density, tree.saturationDensity[one]!);
    }
    return conductance > 0 ? { conductance, density } : { conductance: 0, density: 0 };
  }

  /** Density [kg/m³] a box settles at, its neighbour's and its exchange given, with what gives off vapour in it. */
  settled(box: number, around: number, { conductance, density }: GivenVapour, litresPerHour: number): number {
    const { tree } = this.#kitchen.optimist;
    const exchange = litresPerHour / litresPerHourInCubicMetrePerSecond;
    const gained = exchange * around + conductance * density;
    const lost = exchange + conductance;
    const coil = tree.coilExchange[box]!;
    const coilDensity = tree.coilDensity[box]!;
    const settled =
      coil > 0 && gained / lost > coilDensity ? (gained + coil * coilDensity) / (lost + coil) : gained / lost;
    return Math.min(settled, tree.saturationDensity[box]!);
  }
}
