import type { Optimist, OptimisticWay } from "@keepwright/physics";
import { lastSafeDay } from "../rules/safeTime.js";
import type { Prepared } from "../search/prepare.js";
import { type LeastCosts, leastCosts } from "./leastCosts.js";
import { airOf, type LotAir } from "./lotAir.js";
import type { Way } from "./ways.js";

/** A way to deal with a lot that is first ready on one day, priced in the air known only within bounds. */
export interface Priced extends LeastCosts {
  readonly readyDay: number;
  readonly ripens: OptimisticWay["ripens"];
}

/** A way whose prices are remembered by the air they were worked out in. */
export class PricedWay {
  readonly way: Way;
  readonly #prepared: Prepared;
  readonly #lastSafe: number;
  readonly #known = new Map<string, readonly Priced[]>();

  constructor(prepared: Prepared, way: Way) {
    this.way = way;
    this.#prepared = prepared;
    this.#lastSafe = lastSafeDay(prepared.problem, way.lot, way.programme, [0]);
  }

  prices(optimist: Pick<Optimist, "ways">, air: LotAir): readonly Priced[] {
    const key = this.#key(air);
    const known = this.#known.get(key) ?? this.#priced(optimist, air);
    this.#known.set(key, known);
    return known;
  }

  /** What of the air a way meets, as a text. */
  #key(air: LotAir): string {
    const { leastEthylene, mostEthylene, mostDensity, leastResistance } = airOf(this.way, air);
    return this.way.boxes
      .map(
        (box) =>
          `${leastEthylene.map((window) => window[box])} ${mostEthylene[box]} ${mostDensity[box]} ${leastResistance[box]}`,
      )
      .join(" > ");
  }

  #priced(optimist: Pick<Optimist, "ways">, air: LotAir): Priced[] {
    const { problem, spread, bestLife } = this.#prepared;
    const { lot, programme, whole, leastKilograms } = this.way;
    const { days } = problem.household;
    return optimist.ways(whole, airOf(this.way, air), days, leastKilograms).map((one) => ({
      ...leastCosts(problem, lot, one, spread(lot.index, programme), bestLife(lot.index), this.#lastSafe),
      readyDay: one.readyDay,
      ripens: one.ripens,
    }));
  }
}
