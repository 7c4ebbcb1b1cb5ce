import type { Wrap, WrapId } from "@keepwright/catalogue";
import { type AirTree, airTree } from "../climate/airTree.js";
import { vapourConductance } from "../produce/emission.js";
import type { CompiledStay } from "../simulate/compiledStay.js";
import { LotCompiler } from "../simulate/compiler.js";
import type { RunningLot } from "../simulate/runningLot.js";
import type { AirBox, RoomAir, SimulatedLot } from "../simulate/simulation.js";
import type { AirRanges } from "./airRanges.js";
import { type OptimisticCourse, optimisticCourse } from "./optimisticCourse.js";
import { type RipeningTime, ripeningTime, stepperError } from "./ripeningTime.js";
import { StayInRange } from "./stayInRange.js";
import { steadyCourse } from "./steadyCourse.js";

/** The best that may become of a lot that is first ready to eat on one day. */
export interface OptimisticWay extends OptimisticCourse {
  /** First whole day it is ready to eat [d]; Infinity when that is not within the horizon. */
  readonly readyDay: number;
  /** Days between which it becomes ripe. */
  readonly ripens: RipeningTime;
}

/** Vapour given off into the box's air, conductance · (its density − that of the air) [kg/s]. */
export interface GivenVapour {
  /** [m³/s] */
  readonly conductance: number;
  /** Density [kg/m³] at which it gives off nothing. */
  readonly density: number;
}

/** What a lot gives off into the air of its box in one stay. */
export interface GivenInStay {
  /** Index of the box; the number of boxes for the open room. */
  readonly box: number;
  /** Ethylene [µL/h] as it arrives and when ripe. */
  readonly arriving: number;
  readonly ripe: number;
  /** In air drier than `density`: all together, and in as small parts as may be, from which more passes. */
  readonly vapour: GivenVapour & { readonly apart: number };
  /** Conductance [m³/s] at the most in damper air, in as small parts as may be: what condenses within a wrap passes only the wrap. */
  readonly taking: number;
}

/** Finds the best that can become of lots in a kitchen, one at a time, in air known only within bounds. Pure but for what it remembers of kinds. */
export class Optimist {
  readonly tree: AirTree;
  readonly #compiler: LotCompiler;

  /** @param boxes of the kitchen; how fast they exchange air does not matter */
  constructor(boxes: readonly AirBox[], room: RoomAir, wraps?: ReadonlyMap<WrapId, Wrap>) {
    this.tree = airTree(boxes, room);
    this.#compiler = new LotCompiler(wraps);
  }

  /**
   * One way for each whole day before the horizon on which it may be ready first, and one for later if that may be.
   *
   * @param leastKilograms of the lot that may lie so, where it may be split: what is found holds for any part from this to the whole
   */
  ways(
    lot: SimulatedLot,
    air: AirRanges,
    horizonDays: number,
    leastKilograms = lot.kilograms,
  ): OptimisticWay[] {
    const running = this.#compiler.lot(lot, this.tree);
    const stays = this.#ranges(running, air, leastKilograms);
    const whole = ripeningTime(running, stays, air);
    const way = (readyDay: number, ripens: RipeningTime): OptimisticWay => {
      const steady = !running.ripens && stays.length === 1;
      const { endDay, quality } = steady
        ? steadyCourse(running, stays[0]!, air, horizonDays)
        : optimisticCourse(running, stays, air, ripens, horizonDays);
      return { endDay: steady ? endDay : endDay * (1 + stepperError.end), quality, readyDay, ripens };
    };
    if (whole.to === 0) return [way(0, whole)];
    const ways: OptimisticWay[] = [];
    const last = Math.min(horizonDays - 1, Math.ceil(whole.to));
    for (let day = Math.max(1, Math.ceil(whole.from)); day <= last; day++) {
      ways.push(way(day, { from: Math.max(whole.from, day - 1), to: Math.min(whole.to, day) }));
    }
    if (whole.to > horizonDays - 1) {
      ways.push(way(Number.POSITIVE_INFINITY, { from: Math.max(whole.from, horizonDays - 1), to: whole.to }));
    }
    return ways;
  }

  /** Ethylene [µL/L] that the air of its first box must reach at some time for a lot to be ready by a day; no more than that air may hold. */
  needs(lot: SimulatedLot, air: AirRanges, readyDay: number): number {
    const running = this.#compiler.lot(lot, this.tree);
    const first = running.stays[0]!;
    const most = air.mostEthylene[first.box]!;
    const readyWith = (ethylene: number): boolean => {
      const mostEthylene = air.mostEthylene.map((now, box) => (box === first.box ? ethylene : now));
      const stays = this.#ranges(running, { ...air, mostEthylene });
      return ripeningTime(running, [stays[0]!], air).from <= readyDay;
    };
    let low = air.roomEthylene;
    if (first.box >= this.tree.size || !Number.isFinite(readyDay) || readyWith(low)) return low;
    let high = most;
    for (let halving = 0; halving < 12; halving++) {
      const middle = Math.sqrt(low * high);
      if (readyWith(middle)) high = middle;
      else low = middle;
    }
    return low;
  }

  /** The most a lot can ripen in a day in its first stay [1/d]. */
  fastestRipening(lot: SimulatedLot, air: AirRanges): number {
    const running = this.#compiler.lot(lot, this.tree);
    return this.#ranges(running, air)[0]!.fastestRipening(1);
  }

  #ranges(running: RunningLot, air: AirRanges, leastKilograms = running.kilograms): StayInRange[] {
    const { lot, stays, state } = running;
    const least =
      leastKilograms === lot.kilograms
        ? stays
        : this.#compiler.lot({ ...lot, kilograms: leastKilograms }, this.tree).stays;
    return stays.map(
      (stay, which) =>
        new StayInRange(
          { stay, kilograms: lot.kilograms },
          { stay: least[which]!, kilograms: leastKilograms },
          state,
          air,
        ),
    );
  }

  /**
   * What a lot gives off in each of its stays.
   *
   * @param leastKilograms of its smallest part, where it may be split
   */
  gives(lot: SimulatedLot, leastKilograms = lot.kilograms): GivenInStay[] {
    const running = this.#compiler.lot(lot, this.tree);
    const smallest = this.#compiler.lot({ ...lot, kilograms: leastKilograms }, this.tree);
    const parts = lot.kilograms / leastKilograms;
    const nowhere: AirRanges = {
      roomEthylene: 0,
      windows: [0],
      leastEthylene: [new Float64Array(this.tree.size + 1)],
      mostEthylene: new Float64Array(this.tree.size + 1),
      leastDensity: new Float64Array(this.tree.size + 1),
      mostDensity: new Float64Array(this.tree.size + 1),
      leastResistance: new Float64Array(this.tree.size + 1),
      mostResistance: new Float64Array(this.tree.size + 1),
    };
    const ranges = this.#ranges(running, nowhere);
    return running.stays.map((stay, which) => {
      const small = smallest.stays[which]!;
      const surface = vapourConductance(stay.at, running.state) * stay.pressurePerDensity;
      return {
        box: stay.box,
        arriving: ranges[which]!.emission(lot.ripeness),
        ripe: ranges[which]!.emission(1),
        vapour: {
          ...givenVapour(stay, surface * lot.kilograms),
          apart: givenVapour(small, surface * leastKilograms).conductance * parts,
        },
        taking: stay.closed ? small.exchange * parts : surface * lot.kilograms,
      };
    });
  }
}

/**
 * In air drier than the lot's own surface: through its wrap in series, or at saturation where the wrap holds water of its own. Only in damper air does water condense in a
 * wrap that is not wet.
 */
function givenVapour(
  { closed, wet, exchange, surfaceDensity, saturationDensity }: CompiledStay,
  surface: number,
): GivenVapour {
  if (wet) return { conductance: exchange, density: saturationDensity };
  const conductance = closed ? (exchange * surface) / (exchange + surface) : surface;
  return { conductance, density: surfaceDensity };
}
