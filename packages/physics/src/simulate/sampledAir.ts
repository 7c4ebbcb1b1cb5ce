import type { AirTree } from "../climate/airTree.js";
import { sameTime } from "./lotMoves.js";
import type { StepListener } from "./run.js";
import type { StageAir } from "./stageAir.js";
import type { Tape } from "./tape.js";

/**
 * Ethylene that changed by less than this share counts as unchanged (it shifts life by at most 0.15 %, as that goes with the logarithm), and
 * so does vapour that changed by less than this share of what is missing to saturation.
 */
const sameEthylene = 1e-2;
const sameVapour = 2e-3;

/**
 * The air of a changed run at the samples (one a day, see samples.ts) and, as one sample more, at the horizon; and which boxes it
 * changed in.
 */
export class SampledAir implements StepListener {
  readonly density: Float64Array;
  readonly ethylene: Float64Array;
  /** By sample and box, 1 where the air is other than on the tape. */
  readonly changed: Uint8Array;
  /** Boxes and the room: entries a sample. */
  readonly width: number;
  readonly #tree: AirTree;
  readonly #tape: Tape;
  readonly #samples: readonly number[];
  #next = 0;

  constructor(tree: AirTree, tape: Tape, samples: readonly number[]) {
    this.#tree = tree;
    this.#tape = tape;
    this.#samples = samples;
    this.width = tree.size + 1;
    const entries = (samples.length + 1) * this.width;
    this.density = new Float64Array(entries);
    this.ethylene = new Float64Array(entries);
    this.changed = new Uint8Array(entries);
  }

  start(day: number, _length: number, air: StageAir): void {
    while (day === this.#tape.days[this.#samples[this.#next] ?? -1]) this.#keep(air, this.#next++);
  }

  end(day: number, length: number, air: StageAir): void {
    if (day + length >= this.#tape.days[this.#tape.intervals]! - sameTime)
      this.#keep(air, this.#samples.length);
  }

  #keep(air: StageAir, sample: number): void {
    const offset = sample * this.width;
    this.density.set(air.density, offset);
    this.ethylene.set(air.ethylene, offset);
  }

  /** Notes in which boxes and at which samples the air is other than on the tape. To be called once the run is over. */
  compare(): void {
    const { width } = this;
    for (let sample = 0; sample <= this.#samples.length; sample++) {
      const last = sample === this.#samples.length;
      const side = last ? this.#tape.end : this.#tape.start;
      const was = (last ? this.#tape.intervals - 1 : this.#samples[sample]!) * width;
      const is = sample * width;
      for (let box = 0; box < this.#tree.size; box++) {
        const vapour = Math.abs(this.density[is + box]! - side.density[was + box]!);
        const ethylene = Math.abs(this.ethylene[is + box]! - side.ethylene[was + box]!);
        const most = sameVapour * (this.#tree.saturationDensity[box]! - this.density[is + box]!);
        this.changed[is + box] = vapour > most || ethylene > sameEthylene * this.ethylene[is + box]! ? 1 : 0;
      }
    }
  }
}
