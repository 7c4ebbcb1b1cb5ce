import { endingProgress } from "../produce/ending.js";
import { type Ending, endings, at as position, stateNames } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";

/** An end reached within a step: days from its start. */
export interface FoundEnd {
  readonly after: number;
  readonly endedBy: Ending;
}

const senescence = endings.indexOf("senescence");
const chilling = endings.indexOf("chilling");

/** A step as the finder sees it: the state at its start, and the rates at its start and end. */
export interface SteppedStates {
  readonly produce: Produce;
  readonly state: Float64Array;
  readonly rates: Float64Array;
  readonly laterRates: Float64Array;
}

/**
 * Finds ends within a step at whose start and end the rates are known, along the parabola they make of every state. All endings are straight in the states but
 * senescence and chilling, which share one sum: the larger of the two is that sum (see `endingProgress`), so it is looked for as one.
 */
export class EndFinder {
  readonly #state = new Float64Array(stateNames.length);
  readonly #start = new Float64Array(endings.length);
  readonly #middle = new Float64Array(endings.length);
  readonly #end = new Float64Array(endings.length);

  /**
   * The first end in a step; undefined where none comes. A step without
   * end (Infinity) has constant rates, and always has an end: at Infinity, named "senescence", where nothing advances.
   */
  find(lot: SteppedStates, length: number): FoundEnd | undefined {
    const endless = length === Number.POSITIVE_INFINITY;
    const span = endless ? 1 : length;
    this.#progressAt(lot, span, 0, this.#start);
    this.#progressAt(lot, span, 1, this.#end);
    if (!endless) this.#progressAt(lot, span, 0.5, this.#middle);
    let earliest = Number.POSITIVE_INFINITY;
    let which = senescence;
    for (let ending = 0; ending < endings.length; ending++) {
      const share = endless ? this.#straight(ending) : this.#curved(ending);
      if (share < earliest) {
        earliest = share;
        which = ending;
      }
    }
    if (earliest === Number.POSITIVE_INFINITY)
      return endless ? { after: earliest, endedBy: "senescence" } : undefined;
    return { after: earliest * span, endedBy: endings[this.#named(lot, which, span, earliest)]! };
  }

  /** Progress at a share of the span, senescence and chilling as one. */
  #progressAt(
    { produce, state, rates, laterRates }: SteppedStates,
    span: number,
    share: number,
    out: Float64Array,
  ): void {
    const first = span * share * (1 - 0.5 * share);
    const second = span * share * 0.5 * share;
    for (let entry = 0; entry < state.length; entry++) {
      this.#state[entry] = state[entry]! + first * rates[entry]! + second * laterRates[entry]!;
    }
    endingProgress(produce, this.#state, out);
    out[senescence] = Math.max(out[senescence]!, out[chilling]!);
    out[chilling] = 0;
  }

  #straight(ending: number): number {
    const missing = 1 - this.#start[ending]!;
    if (missing <= 0) return 0;
    const slope = this.#end[ending]! - this.#start[ending]!;
    return slope > 0 ? missing / slope : Number.POSITIVE_INFINITY;
  }

  /** Share of the span at which a parabola through start, middle and end reaches 1. Progress never falls, so it does when it has at the end. */
  #curved(ending: number): number {
    const start = this.#start[ending]!;
    const end = this.#end[ending]!;
    if (start >= 1) return 0;
    if (end < 1) return Number.POSITIVE_INFINITY;
    const bend = 2 * (end - 2 * this.#middle[ending]! + start);
    const slope = end - start - bend;
    return (2 * (1 - start)) / (slope + Math.sqrt(Math.max(0, slope * slope + 4 * bend * (1 - start))));
  }

  /** Which name the ending has: where the sum of senescence and chilling is full, that of the larger. */
  #named(lot: SteppedStates, ending: number, span: number, share: number): number {
    if (ending !== senescence) return ending;
    this.#progressAt(lot, span, share, this.#middle);
    return this.#state[position.chilling]! > this.#state[position.senescence]! ? chilling : senescence;
  }
}
