import { figureWraps, type Wrap, type WrapId } from "@keepwright/catalogue";
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
  readonly #kept = new Map<Produce, Map<number, ProduceAtTemperature>[]>();

  constructor(wraps: ReadonlyMap<WrapId, Wrap> = figureWraps()) {
    this.#wraps = wraps;
  }

  lot(lot: SimulatedLot, tree: AirTree): RunningLot {
    const stays = lot.stays.map((stay) =>
      compiledStay(stay, lot, tree, this.#wraps, this.#at(lot.produce, lot.form, stay.temperature)),
    );
    return runningLot(lot, stays);
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
