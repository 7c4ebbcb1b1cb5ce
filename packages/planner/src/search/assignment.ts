import { bestPrices, type Offer, priced } from "./roomMultipliers.js";

/** One way for one of those that share the room. */
export interface Way extends Offer {
  /** Equal for ways of the same one that differ in little. */
  readonly name: string;
}

/** A way for each, by number, and what all of them cost together, want of room included [g]. */
export interface Assignment {
  readonly ways: readonly number[];
  readonly cost: number;
}

export interface Limits {
  /** Left out is whatever begins so that it could not cost less than this [g]; what is found may cost a little more. */
  readonly below: number;
  /** What a litre over the room of a place costs [g]. */
  readonly perLitreOver: number;
  /** Assignments handed on, and ways looked at before the rest is left, at most. */
  readonly kept: number;
  readonly looked: number;
}

/** Litres over the room of a place that are rounding. */
const roundingLitres = 1e-6;

interface Found extends Assignment {
  readonly name: string;
}

/** One of those to be laid, its ways in the order of their costs with their room paid for. */
interface ToLay {
  readonly index: number;
  readonly litres: number;
  readonly ways: readonly { readonly way: Way; readonly number: number; readonly price: number }[];
}

const mostLitres = (ways: readonly Way[]): number =>
  Math.max(...ways.map(({ litres }) => litres.reduce((sum, one) => sum + one, 0)));

/** Lays one after another, the bulkiest first, and leaves off where even the cheapest rest would cost too much. */
class Assigner {
  readonly #order: readonly ToLay[];
  readonly #limits: Limits;
  readonly #prices: Float64Array;
  /** The least that those from each on cost, their room paid for. */
  readonly #rest: number[] = [0];
  readonly #chosen: number[];
  readonly #free: Float64Array;
  readonly #names: readonly (readonly string[])[];
  readonly found: Found[] = [];
  #looked = 0;

  constructor(all: readonly (readonly Way[])[], room: readonly number[], limits: Limits) {
    this.#limits = limits;
    this.#prices = bestPrices(all, room, limits.below, limits.perLitreOver);
    this.#names = all.map((ways) => ways.map(({ name }) => name));
    this.#chosen = all.map(() => 0);
    this.#free = Float64Array.from(room);
    this.#order = all
      .map((ways, index) => ({
        index,
        litres: mostLitres(ways),
        ways: ways
          .map((way, number) => ({ way, number, price: priced(way, this.#prices) }))
          .sort((a, b) => a.price - b.price),
      }))
      .sort((a, b) => b.litres - a.litres || a.index - b.index);
    for (const { ways } of [...this.#order].reverse()) this.#rest.unshift(this.#rest[0]! + ways[0]!.price);
  }

  /** The least that all could cost with so many laid: what is laid, and the rest with its room paid for, less what the room left is worth. */
  #least(laid: number, cost: number): number {
    let least = cost + this.#rest[laid]!;
    for (let place = 0; place < this.#free.length; place++) {
      least -= this.#prices[place]! * Math.max(0, this.#free[place]!);
    }
    return least;
  }

  lay(laid: number, cost: number): void {
    const { below, kept, looked, perLitreOver } = this.#limits;
    const worst = this.found.length < kept ? below : this.found.at(-1)!.cost;
    if (this.#least(laid, cost) >= worst || this.#looked > looked) return;
    if (laid === this.#order.length) {
      this.#keep(cost);
      return;
    }
    const { index, ways } = this.#order[laid]!;
    for (const { way, number } of ways) {
      this.#looked++;
      const over = this.#take(way, 1);
      this.#chosen[index] = number;
      this.lay(laid + 1, cost + way.cost + (over > roundingLitres ? over * perLitreOver : 0));
      this.#take(way, -1);
    }
  }

  /** Takes room (sign 1) or gives it back (−1); tells how many litres are over by what is taken. */
  #take({ litres }: Way, sign: number): number {
    let over = 0;
    for (let place = 0; place < litres.length; place++) {
      const free = this.#free[place]!;
      const taken = litres[place]!;
      if (taken > free) over += Math.min(taken, taken - free);
      this.#free[place] = free - sign * taken;
    }
    return over;
  }

  /** Keeps the cheapest of those alike, and few of these. */
  #keep(cost: number): void {
    const name = this.#chosen.map((number, index) => this.#names[index]![number]).join(" ");
    const alike = this.found.findIndex((one) => one.name === name);
    if (alike >= 0 && this.found[alike]!.cost <= cost) return;
    if (alike >= 0) this.found.splice(alike, 1);
    this.found.push({ ways: [...this.#chosen], cost, name });
    this.found.sort((a, b) => a.cost - b.cost);
    if (this.found.length > this.#limits.kept) this.found.pop();
  }
}

/**
 * The cheapest assignments of a way to each, best first, no two of them alike: the generalised assignment problem, by branch and bound. The
 * bound is the Lagrangian one: the room that is taken paid for, less what all the room is worth. Exact unless more ways are looked at than the limit.
 */
export function cheapestAssignments(
  all: readonly (readonly Way[])[],
  room: readonly number[],
  limits: Limits,
): readonly Assignment[] {
  const assigner = new Assigner(all, room, limits);
  assigner.lay(0, 0);
  return assigner.found;
}
