import { productionAtRipeness } from "../ethylene/production.js";
import { vapourConductance } from "../produce/emission.js";
import { at as position } from "../produce/lotState.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, blankConditions, type MutableConditions } from "../simulate/airAround.js";
import type { CompiledStay } from "../simulate/compiledStay.js";
import { usualStepDays } from "../simulate/grid.js";
import { transpirationRate } from "../waterLoss/transpirationRate.js";
import type { AirRanges } from "./airRanges.js";

const secondsPerDay = 86_400;
const { waterLost, chilling, ripeness } = position;

/** Some of a lot in a stay: what passes through a wrap depends on how much lies in it. */
export interface SizedStay {
  readonly stay: CompiledStay;
  readonly kilograms: number;
}

/** Ethylene given off at a ripeness [µL/h]. */
const emissionOf = ({ stay, kilograms }: SizedStay, ripe: number): number =>
  productionAtRipeness(stay.at.logEthyleneUnripe, stay.at.logEthyleneRipe, ripe) * kilograms;

/** The air around it at densities of the boxes' air; its ethylene is left at 0. */
function vapourAround(
  { stay, kilograms }: SizedStay,
  state: Float64Array,
  density: Float64Array,
): MutableConditions {
  const around = blankConditions();
  const surface = vapourConductance(stay.at, state) * kilograms * stay.pressurePerDensity;
  airAround(stay, surface, 0, density[stay.box]!, 0, around);
  return around;
}

/** Water lost a day [1/d] in the dampest air. */
function waterRate(sized: SizedStay, state: Float64Array, air: AirRanges): number {
  const { conductance, surfaceVapourPressure } = sized.stay.at;
  const { vapourPressure, uptake } = vapourAround(sized, state, air.mostDensity);
  return secondsPerDay * transpirationRate(conductance, surfaceVapourPressure, vapourPressure, uptake);
}

/**
 * A lot in one stay whose air is known only within bounds: how fast, at the least, each process goes on in it, and how fast it may ripen at the most.
 *
 * Sound because every rate rises or falls with each of ethylene, vapour and ripeness throughout (a test holds the simulation to it): ageing, rot, sprouting and
 * injury are least in the least ethylene and the driest air, water loss in the dampest, and chilling at the ripeness that bears cold best. Where only a part of a lot may lie in the stay, its own
 * ethylene is least around the smallest part and most around the whole; the air in a wrap lies between that around the two, for it goes one way with the mass.
 */
export class StayInRange {
  readonly stay: CompiledStay;
  /** All of the lot, and the least of it that may lie there. */
  readonly #all: SizedStay;
  readonly #least: SizedStay;
  readonly #air: AirRanges;
  readonly #water: number;
  readonly #conditions: MutableConditions;
  readonly #state: Float64Array;
  readonly #rates: Float64Array;

  /**
   * @param all of the lot in the stay
   * @param least of it that may lie there: its rates are those of anything between the two
   */
  constructor(all: SizedStay, least: SizedStay, state: Float64Array, air: AirRanges) {
    this.stay = all.stay;
    this.#all = all;
    this.#least = least;
    this.#air = air;
    this.#state = state.slice();
    this.#rates = new Float64Array(state.length);
    this.#water = Math.min(waterRate(all, state, air), waterRate(least, state, air));
    const [driest, other] = [all, least]
      .map((sized) => vapourAround(sized, state, air.leastDensity))
      .sort((a, b) => a.vapourPressure - b.vapourPressure);
    this.#conditions = { ...driest!, wetness: Math.min(driest!.wetness, other!.wetness) };
  }

  /** Ethylene all of the lot gives off at a ripeness [µL/h]. */
  emission(ripe: number): number {
    return emissionOf(this.#all, ripe);
  }

  /**
   * The least of the harm to eating [1] at which it stops. The stepper takes half a step's worth where a step begins below the most and would end above it, so it may stay up to that much below.
   */
  get leastFullHarm(): number {
    const { harmMost, harmRate } = this.stay.at;
    return harmMost - 0.5 * usualStepDays * harmRate;
  }

  get overRipening(): number {
    return this.stay.at.overRipeningRate;
  }

  /** The most it can ripen in a day while unripe, at a ripeness [1/d]. */
  fastestRipening(ripe: number): number {
    const { at, box, closed, litresPerHour } = this.stay;
    if (!at.ripens || at.ripeningRate === 0) return 0;
    const own = this.emission(ripe);
    const around = this.#air.mostEthylene[box]! + own * this.#air.mostResistance[box]!;
    const ethylene = closed ? around + own / litresPerHour : around;
    return this.#ratesAt(0, ethylene)[ripeness]!;
  }

  /** The least it can ripen in a day while unripe, at a ripeness in a window [1/d]. */
  slowestRipening(ripe: number, window: number): number {
    const { at } = this.stay;
    if (!at.ripens || at.ripeningRate === 0) return 0;
    return this.#ratesAt(0, this.#leastEthylene(ripe, window))[ripeness]!;
  }

  /**
   * The least change of every state a day [1/d], into `out`; that of ripeness too.
   *
   * @param doses at the least so far; only what spoils eating is read
   * @param unripest, ripest how ripe it may be
   */
  leastRates(doses: Float64Array, unripest: number, ripest: number, window: number, out: Float64Array): void {
    const { at } = this.stay;
    this.#state.set(doses);
    this.#state[ripeness] = unripest;
    this.#conditions.ethylene = this.#leastEthylene(unripest, window);
    stateRates(at, this.#state, this.#conditions, out);
    out[waterLost] = this.#water;
    // Fruit bears cold the better the riper, if that changes at all.
    if (at.chillingDeficitChange < 0 && ripest > unripest) {
      out[chilling] = this.#ratesAt(ripest, this.#conditions.ethylene)[chilling]!;
    }
  }

  #ratesAt(ripe: number, ethylene: number): Float64Array {
    this.#state[ripeness] = ripe;
    this.#conditions.ethylene = ethylene;
    stateRates(this.stay.at, this.#state, this.#conditions, this.#rates);
    return this.#rates;
  }

  /** Ethylene around the lot at the least, its own among it. */
  #leastEthylene(ripe: number, window: number): number {
    const { box, closed, litresPerHour } = this.#least.stay;
    const { leastEthylene, roomEthylene, leastResistance } = this.#air;
    const own = emissionOf(this.#least, ripe);
    const inBox = Math.max(leastEthylene[window]![box]!, roomEthylene + own * leastResistance[box]!);
    return closed ? inBox + own / litresPerHour : inBox;
  }
}
