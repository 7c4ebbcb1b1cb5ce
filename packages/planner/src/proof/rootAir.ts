import { type AirRanges, type GivenVapour, litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import type { BoxExchange, KitchenBoxes } from "./kitchenBoxes.js";
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
  ranges({ vents, leastEthylene, mostDensity }: Supposition, lot: number): AirRanges {
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
   * Densities between which each box's always lies: settled empty or with everything in it that gives off or takes up vapour, the air changing least or most.
   * Between these the density goes one way as produce is added: towards that of its surface.
   */
  #densities(): { least: Float64Array; most: Float64Array } {
    const { size, neighbour, optimist } = this.#kitchen;
    const { tree } = optimist;
    const exchange = this.#kitchen.exchange(this.#kitchen.everyVent());
    const least = new Float64Array(size + 1).fill(tree.roomDensity);
    const most = new Float64Array(size + 1).fill(tree.roomDensity);
    for (let box = 0; box < size; box++) {
      const load = this.#load(box);
      const next = neighbour[box]!;
      least[box] = Number.POSITIVE_INFINITY;
      most[box] = 0;
      for (const litres of [exchange.least[box]!, exchange.most[box]!]) {
        for (const given of [load, { conductance: 0, density: 0 }]) {
          least[box] = Math.min(least[box]!, this.settled(box, least[next]!, given, litres));
          most[box] = Math.max(most[box]!, this.settled(box, most[next]!, given, litres));
        }
      }
    }
    return { least, most };
  }

  /** All lots in a box or behind it, each the way that gives off most, at the highest density any of them gives off at. */
  #load(box: number): GivenVapour {
    let conductance = 0;
    let density = 0;
    for (const ways of this.#ways) {
      let ofLot = 0;
      for (const { gives } of ways) {
        for (const given of gives) {
          if (!this.#kitchen.behind[box]!.has(given.box)) continue;
          ofLot = Math.max(ofLot, given.vapour.conductance);
          density = Math.max(density, given.vapour.density);
        }
      }
      conductance += ofLot;
    }
    return { conductance, density };
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
