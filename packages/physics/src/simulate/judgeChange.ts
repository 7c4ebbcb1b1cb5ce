import { airChanges } from "./airChanges.js";
import { DayAirRecorder } from "./dayAir.js";
import { Estimator } from "./estimate.js";
import type { JudgedLot, JudgeOptions, LotChange } from "./judgement.js";
import { lotOutcome } from "./outcome.js";
import { Run } from "./run.js";
import { type RunningLot, runningLot } from "./runningLot.js";
import type { LotOutcome, SimulatedLot } from "./simulation.js";
import type { Trajectory } from "./trajectory.js";
import { backgroundWithout } from "./without.js";

/** Share of its life by which an estimated end may be wrong before the lot is followed again. */
const usualTolerance = 0.01;

/**
 * What a change to some lots does, without simulating everything again.
 *
 * The changed lots are followed, together, by the same time-stepper, in the air that all others make as they did on record. For the
 * others the end is shifted by an estimate, day by day, of what the changed air does to them; those it shifts by much, and fruit that would
 * ripen at another pace, are then followed too, together with the changed ones. Lots whose air does not change are left out of the answer.
 * Agreement with `simulate` and speed: docs/model/time-stepping.md. Pure.
 */
export function judgeChange(
  base: Trajectory,
  changes: readonly LotChange[],
  options: JudgeOptions = {},
): JudgedLot[] {
  const judge = new Judge(base, changes, options.daily ?? false);
  judge.follow();
  let again = judge.shifted(options.tolerance ?? usualTolerance);
  for (let round = 0; round < (options.rounds ?? 1) && again.length > 0; round++) {
    judge.followToo(again);
    again = judge.shifted(options.tolerance ?? usualTolerance);
  }
  return judge.judged();
}

/**
 * Follows one lot in the air that the lots of a trajectory make, those in `without` left out. What it does to others is left out; it does
 * share the air of its box with itself.
 */
export function followLot(base: Trajectory, lot: SimulatedLot, without: readonly number[] = []): LotOutcome {
  const { compiler, tree, grid, running, tape } = base.inner;
  const followed = compiler.lot(lot, tree);
  const background = backgroundWithout(tape, tree, running, without);
  new Run(tree, grid, [followed], { background, daily: true }).run();
  return lotOutcome(followed);
}

class Judge {
  readonly #base: Trajectory;
  readonly #daily: boolean;
  readonly #estimator: Estimator;
  /** Lots taken out of the record's air: changed, taken away, or followed again. */
  readonly #leftOut: number[] = [];
  /** Those of them that are unchanged and followed again. */
  readonly #again = new Set<number>();
  readonly #followed = new Map<number, RunningLot>();
  readonly #inputs = new Map<number, SimulatedLot>();
  #shifted: { lot: number; outcome: LotOutcome }[] = [];
  #air: DayAirRecorder | undefined;

  constructor(base: Trajectory, changes: readonly LotChange[], daily: boolean) {
    this.#base = base;
    this.#daily = daily;
    this.#estimator = new Estimator(base, daily);
    let next = base.lots.length;
    for (const { lot, to } of changes) {
      const index = lot === "new" ? next++ : lot;
      if (index < base.lots.length) this.#leftOut.push(index);
      if (to) this.#inputs.set(index, to);
    }
  }

  /** Runs the lots that are to be followed in the air of those that are not. */
  follow(): void {
    const { compiler, tree, grid, running, tape } = this.#base.inner;
    this.#followed.clear();
    for (const [index, lot] of this.#inputs) this.#followed.set(index, compiler.lot(lot, tree));
    for (const index of this.#leftOut) {
      const unchanged = running[index]!;
      if (this.#again.has(index)) this.#followed.set(index, runningLot(unchanged.lot, unchanged.stays));
    }
    this.#air = new DayAirRecorder(tree, grid);
    const background = backgroundWithout(tape, tree, running, this.#leftOut);
    const lots = [...this.#followed.values()];
    new Run(tree, grid, lots, { background, listener: this.#air, daily: this.#daily }).run();
  }

  /** Estimates what the air does to all others. Returns those it does so much to that they had better be followed. */
  shifted(tolerance: number): number[] {
    const doubtful: number[] = [];
    this.#shifted = [];
    const { days, width, density, ethylene } = this.#air!;
    const changes = airChanges(this.#base.inner.air, this.#air!, this.#base.inner.tree);
    const air = { days, width, density, ethylene, changes };
    for (let lot = 0; lot < this.#base.lots.length; lot++) {
      if (this.#leftOut.includes(lot)) continue;
      const estimate = this.#estimator.of(lot, air);
      if (!estimate) continue;
      if (estimate.doubtful || estimate.error > tolerance) doubtful.push(lot);
      this.#shifted.push({ lot, outcome: estimate.outcome });
    }
    return doubtful;
  }

  followToo(lots: readonly number[]): void {
    for (const lot of lots) {
      this.#again.add(lot);
      this.#leftOut.push(lot);
    }
    this.follow();
  }

  judged(): JudgedLot[] {
    const followed = [...this.#followed].map(([lot, running]) => ({
      lot,
      outcome: lotOutcome(running),
      followed: true,
    }));
    const shifted = this.#shifted.map(({ lot, outcome }) => ({ lot, outcome, followed: false }));
    return [...followed, ...shifted].sort((one, other) => one.lot - other.lot);
  }
}
