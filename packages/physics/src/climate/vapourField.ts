import type { AirTree } from "./airTree.js";

/**
 * A change of which coils dry and which boxes condense has to exceed this share of the density to count, so that rounding cannot
 * flip it to and fro.
 */
const margin = 1e-12;

/**
 * Settled vapour density in a tree of boxes.
 *
 * Each box balances exchange with its neighbour and the boxes behind it, produce as a source `supply − conductance · c`, a coil that
 * dries air above its own saturation, and condensation that keeps c at or below saturation. For a given choice of drying coils
 * and condensing boxes this is linear and solved by elimination from the leaves to the room and back. The choice is improved until
 * it stands: every choice adds to what leaves a box as c rises, so the densities fall from pass to pass and no choice comes back
 * (Howard's policy iteration on monotone matrices, which ends in at most as many passes as there are choices; Bokanowski, Maroso &
 * Zidani 2009, SIAM J. Numer. Anal. 47; from memory). In a kitchen two passes are usual, and one when the last choice still holds.
 */
export class VapourSolver {
  readonly #tree: AirTree;
  readonly #dries: Uint8Array;
  readonly #condenses: Uint8Array;
  /** Of each box after elimination of the boxes behind it: what it loses per density, and what it gains whatever its density. */
  readonly #loss: Float64Array;
  readonly #gain: Float64Array;

  constructor(tree: AirTree) {
    this.#tree = tree;
    this.#dries = Uint8Array.from(tree.coilExchange, (exchange) => (exchange > 0 ? 1 : 0));
    this.#condenses = new Uint8Array(tree.size);
    this.#loss = new Float64Array(tree.size);
    this.#gain = new Float64Array(tree.size);
  }

  /** Starts from the first guess again, so that what was solved before leaves no trace. */
  reset(): void {
    for (let box = 0; box < this.#dries.length; box++)
      this.#dries[box] = this.#tree.coilExchange[box]! > 0 ? 1 : 0;
    this.#condenses.fill(0);
  }

  /**
   * @param conductance, supply of the produce in each box [m³/s] and [kg/s]: it gives off supply − conductance · c
   * @param out vapour density of each box and of the room [kg/m³]
   * @param condensing water condensing out of each box's air [kg/s], ≥ 0
   */
  settle(conductance: Float64Array, supply: Float64Array, out: Float64Array, condensing: Float64Array): void {
    const most = 2 * this.#tree.size + 2;
    for (let pass = 0; pass < most; pass++) {
      this.#eliminate(conductance, supply);
      this.#substitute(out, condensing);
      if (!this.#chooseAgain(out, condensing)) return;
    }
  }

  /** From the leaves towards the room: a box behind is seen by its neighbour as one more conductance and supply. */
  #eliminate(conductance: Float64Array, supply: Float64Array): void {
    const { size, neighbour, exchange, coilExchange, coilDensity, saturationDensity } = this.#tree;
    const loss = this.#loss;
    const gain = this.#gain;
    for (let box = 0; box < size; box++) {
      const coil = this.#dries[box] ? coilExchange[box]! : 0;
      loss[box] = conductance[box]! + coil;
      gain[box] = supply[box]! + coil * coilDensity[box]!;
    }
    for (let box = size - 1; box >= 0; box--) {
      const passes = exchange[box]!;
      const next = neighbour[box]!;
      if (next < size) {
        const whole = passes + loss[box]!;
        const full = this.#condenses[box];
        loss[next]! += full ? passes : (passes * loss[box]!) / whole;
        gain[next]! += passes * (full ? saturationDensity[box]! : gain[box]! / whole);
      }
    }
  }

  /** Back from the room to the leaves. */
  #substitute(out: Float64Array, condensing: Float64Array): void {
    const { size, neighbour, exchange, saturationDensity, roomDensity } = this.#tree;
    out[size] = roomDensity;
    for (let box = 0; box < size; box++) {
      const gained = exchange[box]! * out[neighbour[box]!]! + this.#gain[box]!;
      const lost = exchange[box]! + this.#loss[box]!;
      const full = this.#condenses[box];
      out[box] = full ? saturationDensity[box]! : gained / lost;
      condensing[box] = full ? gained - lost * saturationDensity[box]! : 0;
    }
  }

  /** Sets which coils dry and which boxes condense by the densities found. Says whether anything changed. */
  #chooseAgain(density: Float64Array, condensing: Float64Array): boolean {
    const { size, exchange, coilExchange, coilDensity, saturationDensity } = this.#tree;
    let changed = false;
    for (let box = 0; box < size; box++) {
      const dries = this.#dries[box]!;
      if (coilExchange[box]! > 0 && switches(dries, density[box]! / coilDensity[box]! - 1)) {
        this.#dries[box] = 1 - dries;
        changed = true;
      }
      const condenses = this.#condenses[box]!;
      const full = saturationDensity[box]!;
      const over = condenses ? condensing[box]! / (exchange[box]! * full) : density[box]! / full - 1;
      if (switches(condenses, over)) {
        this.#condenses[box] = 1 - condenses;
        changed = true;
      }
    }
    return changed;
  }
}

/** A choice that is off is switched on by what is over 0, one that is on is switched off by what is below. */
const switches = (on: number, over: number): boolean => (on ? over < -margin : over > margin);
