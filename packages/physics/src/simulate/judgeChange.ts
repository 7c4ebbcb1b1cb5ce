import { noteAirChanges } from "./airChanges.js";
import type { WantedQuality } from "./estimated.js";
import type { JudgedLot, JudgeOptions, LotChange } from "./judgement.js";
import { lotOutcome } from "./outcome.js";
import { type KeptDaily, Run } from "./run.js";
import { runAgain } from "./runningLot.js";
import type { LotOutcome, SimulatedLot } from "./simulation.js";
import type { Trajectory } from "./trajectory.js";
import { setBackgroundWithout } from "./without.js";
import { type Workspace, workspaceOf } from "./workspace.js";

/** Share of its life by which an estimated end may be wrong before the lot is followed again. */
const usualTolerance = 0.01;
/** Share by which a lot would change the ethylene of its box, by ripening at another pace, before the air is settled anew with it. */
const airThatMatters = 0.01;

/**
 * What a change to some lots does, without simulating everything again.
 *
 * The changed lots are followed, together, by the same time-stepper, in the air that all others make as they did on record. For the
 * others the end is shifted by an estimate, day by day, of what the changed air does to them. Those it shifts by much are run again in that air;
 * fruit that would ripen at another pace, and so change the air itself, is followed together with the changed lots. Lots whose air does not change are left out of the answer.
 * Agreement with `simulate` and speed: docs/model/time-stepping.md. Pure.
 */
export function judgeChange(
  base: Trajectory,
  changes: readonly LotChange[],
  options: JudgeOptions = {},
): JudgedLot[] {
  const { daily = false, tolerance = usualTolerance, sameLife = 0 } = options;
  const judge = new Judge(base, changes, { daily, tolerance, sameLife });
  judge.follow();
  if (options.worthKnowing && !options.worthKnowing(judge.judged())) return judge.judged();
  let again = judge.shifted();
  for (let round = 0; round < (options.rounds ?? 1) && again.length > 0; round++) {
    judge.followToo(again);
    again = judge.shifted();
  }
  return judge.judged();
}

/**
 * Follows one lot in the air that the lots of a trajectory make, those in `without` left out. What it does to others is left out; it does
 * share the air of its box with itself.
 */
export function followLot(base: Trajectory, lot: SimulatedLot, without: readonly number[] = []): LotOutcome {
  const { compiler, tree, grid, running, tape, steps } = base.inner;
  const { space, background, room } = workspaceOf(base);
  const followed = compiler.lot(lot, tree, room(0));
  setBackgroundWithout(tape, steps, tree, running, without, background);
  new Run(tree, grid, [followed], { background, space, daily: "quality" }).run();
  return lotOutcome(followed);
}

class Judge {
  readonly #base: Trajectory;
  readonly #keeps: KeptDaily;
  readonly #wanted: WantedQuality;
  readonly #work: Workspace;
  /** Lots taken out of the record's air: changed, taken away, or followed again. */
  readonly #leftOut: number[] = [];
  /** Those of them that are unchanged and followed again. */
  readonly #again: number[] = [];
  readonly #inputs: { readonly lot: number; readonly to: SimulatedLot }[] = [];
  /** What becomes of those that are followed. */
  #followed: JudgedLot[] = [];
  #shifted: JudgedLot[] = [];

  constructor(base: Trajectory, changes: readonly LotChange[], wanted: WantedQuality) {
    this.#base = base;
    this.#wanted = wanted;
    this.#keeps = wanted.daily ? "quality" : "nothing";
    this.#work = workspaceOf(base);
    let next = base.lots.length;
    for (const { lot, to } of changes) {
      const index = lot === "new" ? next++ : lot;
      if (index < base.lots.length) this.#leftOut.push(index);
      if (to) this.#inputs.push({ lot: index, to });
    }
  }

  /** Runs the lots that are to be followed in the air of those that are not. */
  follow(): void {
    const { compiler, tree, grid, running, tape, steps } = this.#base.inner;
    const { space, background, air: listener, room } = this.#work;
    const lots = this.#inputs.map(({ to }, index) => compiler.lot(to, tree, room(index)));
    for (const index of this.#again) lots.push(runAgain(running[index]!, room(lots.length)));
    setBackgroundWithout(tape, steps, tree, running, this.#leftOut, background);
    listener.clear();
    new Run(tree, grid, lots, { background, space, listener, daily: this.#keeps }).run();
    const numbers = [...this.#inputs.map(({ lot }) => lot), ...this.#again];
    this.#followed = lots.map((lot, index) => ({
      lot: numbers[index]!,
      outcome: lotOutcome(lot),
      followed: true,
    }));
  }

  /** Estimates what the air does to all others. Returns those that would change the air themselves: they had better be followed. */
  shifted(): number[] {
    const { air, changes, estimator } = this.#work;
    const doubtful: number[] = [];
    this.#shifted = [];
    noteAirChanges(this.#base.inner.air, air.means, this.#base.inner.tree, changes);
    for (let lot = 0; lot < this.#base.lots.length; lot++) {
      if (this.#leftOut.includes(lot)) continue;
      const estimate = estimator.of(lot, air.means, air.last, changes, this.#wanted);
      if (!estimate) continue;
      if (estimate.airShift > airThatMatters) doubtful.push(lot);
      const trusted = (estimate.error ?? 0) <= this.#wanted.tolerance ? estimate.outcome : undefined;
      this.#shifted.push({ lot, outcome: trusted ?? this.#replayed(lot), followed: !trusted });
    }
    return doubtful;
  }

  #replayed(lot: number): LotOutcome {
    return lotOutcome(this.#work.replay.of(this.#base.inner.running[lot]!, this.#keeps));
  }

  followToo(lots: readonly number[]): void {
    for (const lot of lots) {
      this.#again.push(lot);
      this.#leftOut.push(lot);
    }
    this.follow();
  }

  judged(): JudgedLot[] {
    return [...this.#shifted, ...this.#followed].sort((one, other) => one.lot - other.lot);
  }
}
