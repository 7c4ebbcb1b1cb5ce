import type { AirTree } from "../climate/airTree.js";
import { blankConditions } from "./airAround.js";
import { CarryOn } from "./carryOn.js";
import type { DayAirRecorder } from "./dayAir.js";
import { giveOff } from "./giveOff.js";
import { daysUntilMove, makeMoves, sameTime } from "./lotMoves.js";
import { foresee, step } from "./lotStep.js";
import { closeRun, type KeptDaily, keepDay, openRun, type StepListener } from "./run.js";
import { lotRoom, type RunningLot, runAgain } from "./runningLot.js";
import { type BoxAir, boxAir, type StageAir, stageAir } from "./stageAir.js";

/** One step of a changed run: when, and the air at its start and its end. */
interface RecordedStep {
  from: number;
  to: number;
  /** The air was settled anew at its start. */
  moved: boolean;
  readonly start: BoxAir;
  readonly end: BoxAir;
}

/** The air of a changed run, step by step; and its day means, taken along. Room is kept for the next run. */
export class AirRecorder implements StepListener {
  readonly means: DayAirRecorder;
  readonly steps: RecordedStep[] = [];
  /** How many of the steps are of this run. */
  count = 0;
  /** The air at the horizon, with what everything gives off; until the next run. */
  last: StageAir;
  readonly #tree: AirTree;

  constructor(tree: AirTree, means: DayAirRecorder) {
    this.#tree = tree;
    this.means = means;
    this.last = stageAir(tree);
  }

  clear(): void {
    this.count = 0;
    this.means.clear();
  }

  start(day: number, length: number, air: StageAir, _lots: readonly RunningLot[], moved: boolean): void {
    this.means.start(day, length, air);
    if (this.count === this.steps.length) {
      const { size } = this.#tree;
      this.steps.push({ from: 0, to: 0, moved: false, start: boxAir(size), end: boxAir(size) });
    }
    const step = this.steps[this.count]!;
    step.from = day;
    step.to = day + length;
    step.moved = moved;
    copyAir(air, step.start);
  }

  end(day: number, length: number, air: StageAir): void {
    this.means.end(day, length, air);
    copyAir(air, this.steps[this.count]!.end);
    this.last = air;
    this.count++;
  }
}

function copyAir(from: BoxAir, to: BoxAir): void {
  for (let box = 0; box < from.density.length; box++) {
    to.density[box] = from.density[box]!;
    to.ethylene[box] = from.ethylene[box]!;
  }
}

/**
 * Runs a lot of the record once more in recorded air, which it is taken not to change beyond what it did on record. Steps are cut where it
 * moves. Right for lots that give off the same in any air, and near enough for those that give off little.
 */
export class Replay {
  readonly #air: AirRecorder;
  readonly #conditions = blankConditions();
  readonly #cutStart: BoxAir;
  readonly #cutEnd: BoxAir;
  readonly #carryOn: CarryOn;
  readonly #room = lotRoom();

  constructor(tree: AirTree, air: AirRecorder) {
    this.#air = air;
    this.#cutStart = boxAir(tree.size);
    this.#cutEnd = boxAir(tree.size);
    this.#carryOn = new CarryOn(tree);
  }

  of(was: RunningLot, daily: KeptDaily): RunningLot {
    const { steps, count } = this.#air;
    const lot = runAgain(was, this.#room);
    let wholeDay = 1;
    openRun([lot], daily);
    giveOff(lot, lot.state);
    for (let index = 0; index < count; index++) {
      this.#step(lot, steps[index]!);
      if (steps[index]!.to >= wholeDay - sameTime) {
        wholeDay++;
        keepDay(lot, daily);
      }
    }
    closeRun([lot], this.#carryOn, this.#air.last, steps[count - 1]!.to);
    return lot;
  }

  #step(lot: RunningLot, { from, to, moved, start, end }: RecordedStep): void {
    if (moved) lot.ratesHold = false;
    let day = from;
    while (to - day > sameTime) {
      const opening = day === from ? start : blend(start, end, (day - from) / (to - from), this.#cutStart);
      this.#makeMoves(lot, day);
      const until = Math.max(sameTime, daysUntilMove(lot, day, opening, this.#conditions));
      const cut = until < to - day - sameTime;
      const length = cut ? until : to - day;
      const closing = cut ? blend(start, end, (day + length - from) / (to - from), this.#cutEnd) : end;
      foresee(lot, length, opening, this.#conditions);
      giveOff(lot, lot.foreseen);
      step(lot, day, length, { start: opening, end: closing }, this.#conditions);
      day = cut ? day + length : to;
    }
  }

  #makeMoves(lot: RunningLot, day: number): void {
    if (!makeMoves(lot, day)) return;
    giveOff(lot, lot.state);
    lot.ratesHold = false;
  }
}

/** Air at a share of a step. */
function blend(start: BoxAir, end: BoxAir, share: number, out: BoxAir): BoxAir {
  for (let box = 0; box < out.density.length; box++) {
    out.density[box] = (1 - share) * start.density[box]! + share * end.density[box]!;
    out.ethylene[box] = (1 - share) * start.ethylene[box]! + share * end.ethylene[box]!;
  }
  return out;
}
