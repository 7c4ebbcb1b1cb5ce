import { catalogue, type Wrap, type WrapId } from "@keepwright/catalogue";
import type { AirTree } from "../climate/airTree.js";
import { type ProduceAtTemperature, produceAtTemperature } from "../produce/atTemperature.js";
import type { LotForm } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";
import { compiledStay } from "./compiledStay.js";
import { type RunningLot, runningLot } from "./runningLot.js";
import type { SimulatedLot } from "./simulation.js";

/**
 * Works out lots for running, and keeps what depends on kind, form and temperature alone for the next time: a planner tries the same
 * few temperatures thousands of times. What is kept never changes a result.
 */
export class LotCompiler {
  readonly #wraps: ReadonlyMap<WrapId, Wrap>;
  readonly #kept = new Map<Produce, Map<string, ProduceAtTemperature>>();

  constructor(wraps: ReadonlyMap<WrapId, Wrap> = catalogue().wraps) {
    this.#wraps = wraps;
  }

  lot(lot: SimulatedLot, tree: AirTree): RunningLot {
    const stays = lot.stays.map((stay) =>
      compiledStay(stay, lot, tree, this.#wraps, this.#at(lot.produce, lot.form, stay.temperature)),
    );
    return runningLot(lot, stays);
  }

  #at(produce: Produce, form: LotForm, celsius: number): ProduceAtTemperature {
    const ofProduce = this.#kept.get(produce) ?? new Map<string, ProduceAtTemperature>();
    this.#kept.set(produce, ofProduce);
    const key = `${celsius}${form.cut ? " cut" : ""}${form.tops ? " tops" : ""}${form.wet ? " wet" : ""}`;
    const found = ofProduce.get(key) ?? produceAtTemperature(produce, form, celsius);
    ofProduce.set(key, found);
    return found;
  }
}
