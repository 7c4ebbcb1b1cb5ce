import type { Optimist, OptimisticWay } from "@keepwright/physics";
import { isAirtight } from "../rules/airtight.js";
import { weights } from "../rules/weights.js";
import type { Prepared } from "../search/prepare.js";
import { airOf, type LotAir } from "./lotAir.js";
import { type Priced, PricedWay } from "./pricedWay.js";
import type { Way } from "./ways.js";

/**
 * Ways of a lot through the same places, first ready on the same day, that the relaxation need not tell apart: one of them, and those that cost at least as much and take at
 * least as much room in the air that holds everywhere. In narrower air their least costs, day by day, stand for all of them.
 */
export interface Column {
  readonly way: Way;
  readonly readyDay: number;
  readonly ripens: OptimisticWay["ripens"];
  readonly members: readonly PricedWay[];
  /** Ethylene [µL/L] its first box must reach at some time for it to be ready so soon. */
  readonly needs: number;
  /** The most it can ripen in a day in its first box [1/d]. */
  readonly haste: number;
}

/** What a portion costs by a column [g], on each day (Infinity where it cannot be eaten) and left over. */
export interface ColumnCosts {
  readonly onDay: Float64Array;
  readonly left: number;
}

/** Dairy that would take up the smell [g], by the way alone. */
function smellOnDairy({ problem }: Prepared, { lot, stays }: Way, readyDay: number): number {
  const gives = problem.catalogue.odours.some(
    ({ giver, taker }) => giver === lot.commodity.id && taker === "dairy",
  );
  if (!gives) return 0;
  const smells = (stay: number): boolean => {
    const { place, wrap } = stays[stay]!;
    return !isAirtight(wrap) && problem.places[place]!.place.refrigerator !== undefined;
  };
  const moved = stays.length > 1 && readyDay <= problem.household.days - 1;
  return smells(0) || (moved && smells(1)) ? weights.dairyGrams * weights.smellTaken : 0;
}

export class Columns {
  readonly #prepared: Prepared;
  readonly #optimist: Optimist;
  readonly all: readonly Column[];
  readonly #ofLot: readonly (readonly Column[])[];

  constructor(
    prepared: Prepared,
    optimist: Optimist,
    ways: readonly (readonly Way[])[],
    airFor: (lot: number) => LotAir,
  ) {
    this.#prepared = prepared;
    this.#optimist = optimist;
    this.#ofLot = ways.map((ofLot, lot) => this.#columnsOf(ofLot, airFor(lot)));
    this.all = this.#ofLot.flat();
  }

  /** Least costs of a portion by a column in some air; undefined where it cannot be in it. */
  costs({ members, readyDay }: Column, air: LotAir): ColumnCosts | undefined {
    let least: { onDay: Float64Array; left: number } | undefined;
    for (const member of members) {
      const priced = member.prices(this.#optimist, air).find((one) => one.readyDay === readyDay);
      if (!priced) continue;
      const fixed = this.#fixed(member.way, readyDay);
      if (!least) {
        least = { onDay: priced.onDay.map((cost) => cost + fixed), left: priced.left + fixed };
        continue;
      }
      least.left = Math.min(least.left, priced.left + fixed);
      for (let day = 0; day < least.onDay.length; day++) {
        least.onDay[day] = Math.min(least.onDay[day]!, priced.onDay[day]! + fixed);
      }
    }
    return least;
  }

  #fixed(way: Way, readyDay: number): number {
    return (way.effort + smellOnDairy(this.#prepared, way, readyDay)) / way.lot.portions;
  }

  /** Columns of a lot. */
  of(lot: number): readonly Column[] {
    return this.#ofLot[lot]!;
  }

  #columnsOf(ways: readonly Way[], air: LotAir): Column[] {
    const groups = new Map<string, { way: PricedWay; priced: Priced; fixed: number }[]>();
    for (const way of ways) {
      const one = new PricedWay(this.#prepared, way);
      const { programme, stays } = way;
      const path = stays.map(({ place }) => place).join(" > ");
      for (const priced of one.prices(this.#optimist, air)) {
        const smell = smellOnDairy(this.#prepared, way, priced.readyDay);
        const airtight = stays.map(({ wrap }) => isAirtight(wrap)).join();
        // Parts of what ripens may do so by the gas of their like: that is told apart from the whole.
        const apart = way.apart && priced.ripens.to > 0;
        const key = `${path} ${programme.leavesOff} ${priced.readyDay} ${smell > 0} ${airtight} ${apart}`;
        const group = groups.get(key) ?? [];
        groups.set(key, group);
        group.push({ way: one, priced, fixed: this.#fixed(way, priced.readyDay) });
      }
    }
    return [...groups.values()].flatMap(undominated).map((column) => ({
      ...column,
      needs: Math.min(
        ...column.members.map(({ way }) => this.#optimist.needs(way.whole, airOf(way, air), column.readyDay)),
      ),
      haste: Math.max(
        ...column.members.map(({ way }) => this.#optimist.fastestRipening(way.whole, airOf(way, air))),
      ),
    }));
  }
}

type Candidate = { readonly way: PricedWay; readonly priced: Priced; readonly fixed: number };

/** Whether one way costs no more than another on every day, and takes no more room. */
const dominates = (one: Candidate, other: Candidate): boolean =>
  one.fixed + one.priced.left <= other.fixed + other.priced.left &&
  one.way.way.litres.every((litres, stay) => litres <= other.way.way.litres[stay]!) &&
  one.priced.onDay.every((cost, day) => one.fixed + cost <= other.fixed + other.priced.onDay[day]!);

function undominated(group: readonly Candidate[]): Omit<Column, "needs" | "haste">[] {
  const order = [...group].sort((a, b) => a.fixed + a.priced.left - b.fixed - b.priced.left);
  const columns: { best: Candidate; members: Candidate[] }[] = [];
  for (const one of order) {
    const better = columns.find(({ best }) => dominates(best, one));
    if (better) better.members.push(one);
    else columns.push({ best: one, members: [one] });
  }
  return columns.map(({ best, members }) => ({
    way: best.way.way,
    readyDay: best.priced.readyDay,
    ripens: {
      from: Math.min(...members.map(({ priced }) => priced.ripens.from)),
      to: Math.max(...members.map(({ priced }) => priced.ripens.to)),
    },
    members: members.map(({ way }) => way),
  }));
}
