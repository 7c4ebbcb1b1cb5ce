import { figureWraps, type Wrap, type WrapId } from "@keepwright/catalogue";
import type { AirTree } from "../climate/airTree.js";
import { produceAtPace, ratesAtPace } from "../produce/atPace.js";
import { copyOfRates, type ProduceAtTemperature, produceAtTemperature } from "../produce/atTemperature.js";
import type { LotForm } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";
import { compiledStay } from "./compiledStay.js";
import { type LotRoom, type RunningLot, runningLot } from "./runningLot.js";
import type { SimulatedLot, SimulatedStay } from "./simulation.js";

/**
 * Works out lots for running, and keeps what depends on kind, form and temperature alone for the next time: a planner tries the same
 * few temperatures thousands of times. What is kept never changes a result.
 */
export class LotCompiler {
  readonly #wraps: ReadonlyMap<WrapId, Wrap>;
  readonly #kept = new Map<Produce, Map<number, ProduceAtTemperature>[]>();

  constructor(wraps: ReadonlyMap<WrapId, Wrap> = figureWraps()) {
    this.#wraps = wraps;
  }

  /** @param room to be used again (see `runningLot`) */
  lot(lot: SimulatedLot, tree: AirTree, room?: LotRoom): RunningLot {
    const stays = lot.stays.map((stay) => compiledStay(stay, lot, tree, this.#wraps, this.#rates(lot, stay)));
    return runningLot(lot, stays, room, lot.pace ? produceAtPace(lot.produce, lot.pace) : lot.produce);
  }

  /** The rates of a stay. What belongs to the lot and not its kind is put in after what is kept. */
  #rates({ produce, form, pace }: SimulatedLot, stay: SimulatedStay): ProduceAtTemperature {
    const at = this.#at(produce, form, stay.temperature);
    const own = pace ? ratesAtPace(at, pace) : at;
    if (stay.believedTemperature === undefined) return own;
    const { safetyRate } = this.#at(produce, form, stay.believedTemperature);
    if (safetyRate === own.safetyRate) return own;
    const believed = copyOfRates(own);
    believed.safetyRate = safetyRate;
    return believed;
  }

  #at(produce: Produce, form: LotForm, celsius: number): ProduceAtTemperature {
    const forms = this.#kept.get(produce) ?? Array.from({ length: 8 }, () => new Map());
    this.#kept.set(produce, forms);
    const ofForm = forms[(form.cut ? 4 : 0) + (form.tops ? 2 : 0) + (form.wet ? 1 : 0)]!;
    const found = ofForm.get(celsius) ?? produceAtTemperature(produce, form, celsius);
    ofForm.set(celsius, found);
    return found;
  }
}
