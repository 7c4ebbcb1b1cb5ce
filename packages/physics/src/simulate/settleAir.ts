import type { AirTree } from "../climate/airTree.js";
import { settleEthylene } from "../climate/ethyleneField.js";
import { VapourSolver } from "../climate/vapourField.js";
import { addGivenOff, chooseWrapAgain } from "./giveOff.js";
import type { RunningLot } from "./runningLot.js";
import type { StageAir } from "./stageAir.js";

/**
 * What lots that are not followed give off into the boxes: a straight line in time over each of a row of intervals, flat by interval and
 * box, at the start and the end of the interval.
 */
export interface Background {
  /** Number of intervals, and where each begins and the last ends [d]: one more than there are intervals. */
  readonly intervals: number;
  readonly days: Float64Array;
  /** 1 where lots moved, so that the air at the start of an interval is not that at the end of the last. */
  readonly moved: Uint8Array;
  readonly start: GivenOffByBox;
  readonly end: GivenOffByBox;
}

/** Sums over lots, by box: they give off supply − conductance · density [kg/s], and emission [µL/h]. */
export interface GivenOffByBox {
  readonly conductance: Float64Array;
  readonly supply: Float64Array;
  readonly emission: Float64Array;
}

/** Settles the air around lots: boxes and wraps together. One for a run; it keeps which coils dry and what condenses. */
export class AirSettler {
  readonly #tree: AirTree;
  readonly #vapour: VapourSolver;
  readonly #through: Float64Array;

  constructor(tree: AirTree) {
    this.#tree = tree;
    this.#vapour = new VapourSolver(tree);
    this.#through = new Float64Array(tree.size);
  }

  reset(): void {
    this.#vapour.reset();
  }

  /**
   * Air at a share (0…1) of an interval, from what the lots give off (see `giveOff`) on top of the background. Whether water condenses in
   * a wrap is chosen again until it stands; as with the boxes no choice comes back, so that ends.
   */
  settle(
    lots: readonly RunningLot[],
    air: StageAir,
    background: Background | undefined,
    interval: number,
    share: number,
  ): void {
    for (let pass = 0; pass <= 2 * lots.length; pass++) {
      this.#gather(lots, air, background, interval, share);
      this.#vapour.settle(air.conductance, air.supply, air.density, air.condensing);
      let changed = false;
      for (let lot = 0; lot < lots.length; lot++) if (chooseWrapAgain(lots[lot]!, air)) changed = true;
      if (!changed) break;
    }
    settleEthylene(this.#tree, air.emission, this.#through, air.ethylene);
  }

  #gather(
    lots: readonly RunningLot[],
    air: StageAir,
    background: Background | undefined,
    interval: number,
    share: number,
  ): void {
    if (background) fillFrom(background, air, interval * this.#tree.size, share);
    else {
      air.conductance.fill(0);
      air.supply.fill(0);
      air.emission.fill(0);
    }
    for (let lot = 0; lot < lots.length; lot++) addGivenOff(lots[lot]!, air);
  }
}

function fillFrom({ start, end }: Background, air: StageAir, offset: number, share: number): void {
  const before = 1 - share;
  for (let box = 0; box < air.emission.length; box++) {
    const entry = offset + box;
    air.conductance[box] = before * start.conductance[entry]! + share * end.conductance[entry]!;
    air.supply[box] = before * start.supply[entry]! + share * end.supply[entry]!;
    air.emission[box] = before * start.emission[entry]! + share * end.emission[entry]!;
  }
}
