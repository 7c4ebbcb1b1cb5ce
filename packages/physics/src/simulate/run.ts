import type { AirTree } from "../climate/airTree.js";
import { endingProgress } from "../produce/ending.js";
import { quality } from "../produce/quality.js";
import { blankConditions, type MutableConditions } from "./airAround.js";
import { CarryOn } from "./carryOn.js";
import { giveOff } from "./giveOff.js";
import type { Grid } from "./grid.js";
import { daysUntilMove, makeMoves, sameTime } from "./lotMoves.js";
import { foresee, step } from "./lotStep.js";
import { isRipe, type RunningLot } from "./runningLot.js";
import { AirSettler, type Background } from "./settleAir.js";
import { type StageAir, stageAir } from "./stageAir.js";

/** Told of every step: at its start and its end, with the air settled and what each lot gives off set. */
export interface StepListener {
  /** `moved`: the air was settled anew since the end of the last step. */
  start(day: number, length: number, air: StageAir, lots: readonly RunningLot[], moved: boolean): void;
  end(day: number, length: number, air: StageAir, lots: readonly RunningLot[]): void;
}

export type KeptDaily = "state" | "quality" | "nothing";

export interface RunOptions {
  readonly background?: Background | undefined;
  readonly listener?: StepListener | undefined;
  /** What is kept of every lot at every whole day: its quality, its state too, or nothing. */
  readonly daily: KeptDaily;
  /** Room for working, to be used again by the next run with the same boxes; made anew unless given. */
  readonly space?: RunSpace | undefined;
}

/** Room for a run to work in. Nothing in it carries over from one run to the next. */
export interface RunSpace {
  readonly settler: AirSettler;
  readonly first: StageAir;
  readonly second: StageAir;
  readonly carryOn: CarryOn;
}

export const runSpace = (tree: AirTree): RunSpace => ({
  settler: new AirSettler(tree),
  first: stageAir(tree),
  second: stageAir(tree),
  carryOn: new CarryOn(tree),
});

/**
 * Integrates lots and the air they share from day 0 to the horizon. This is the one time-stepper: a whole simulation, one
 * lot followed in given air, and a changed plan all run through it. See docs/model/time-stepping.md.
 */
export class Run {
  readonly #grid: Grid;
  readonly #lots: readonly RunningLot[];
  readonly #options: RunOptions;
  readonly #settler: AirSettler;
  readonly #air: { start: StageAir; end: StageAir };
  readonly #carryOn: CarryOn;
  readonly #conditions: MutableConditions = blankConditions();

  constructor(tree: AirTree, grid: Grid, lots: readonly RunningLot[], options: RunOptions) {
    this.#grid = grid;
    this.#lots = lots;
    this.#options = options;
    const { settler, first, second, carryOn } = options.space ?? runSpace(tree);
    settler.reset();
    this.#settler = settler;
    this.#carryOn = carryOn;
    this.#air = { start: first, end: second };
  }

  run(): void {
    const { steps, stepDays, stepsPerDay } = this.#grid;
    const background = this.#options.background;
    const intervals = background?.intervals ?? steps;
    if (this.#options.daily === "state")
      makeRoomForStates(this.#lots, Math.floor(steps * stepDays + sameTime));
    openRun(this.#lots, this.#options.daily);
    let wholeDay = 1;
    for (let interval = 0; interval < intervals; interval++) {
      const from = background ? background.days[interval]! : interval / stepsPerDay;
      const to = background ? background.days[interval + 1]! : (interval + 1) * stepDays;
      this.#interval(interval, from, to);
      if (to >= wholeDay - sameTime) {
        wholeDay++;
        for (const lot of this.#lots) keepDay(lot, this.#options.daily);
      }
    }
    closeRun(this.#lots, this.#carryOn, this.#air.end, steps * stepDays);
  }

  /** One interval of the grid, cut wherever a lot moves. */
  #interval(interval: number, from: number, to: number): void {
    let day = from;
    while (to - day > sameTime) {
      const opens = day === from;
      const share = (day - from) / (to - from);
      const moved = this.#startAir(interval, share, day, opens);
      const length = this.#lengthOfStep(day, to);
      this.#step(interval, day, length, (day + length - from) / (to - from), moved);
      day = length === to - day ? to : day + length;
    }
  }

  /** The air at the start of a step is that at the end of the last, unless something moved (or it is the first). */
  #startAir(interval: number, share: number, day: number, opens: boolean): boolean {
    let moved = opens && (interval === 0 || this.#options.background?.moved[interval] === 1);
    for (let lot = 0; lot < this.#lots.length; lot++) if (makeMoves(this.#lots[lot]!, day)) moved = true;
    const last = this.#air.end;
    this.#air.end = this.#air.start;
    this.#air.start = last;
    if (!moved) return false;
    for (let lot = 0; lot < this.#lots.length; lot++) {
      giveOff(this.#lots[lot]!, this.#lots[lot]!.state);
      this.#lots[lot]!.ratesHold = false;
    }
    this.#settler.settle(this.#lots, this.#air.start, this.#options.background, interval, share);
    return true;
  }

  #lengthOfStep(day: number, to: number): number {
    let length = to - day;
    for (let lot = 0; lot < this.#lots.length; lot++) {
      const until = daysUntilMove(this.#lots[lot]!, day, this.#air.start, this.#conditions);
      if (until < length - sameTime) length = Math.max(until, sameTime);
    }
    return length;
  }

  /** States foreseen, air at the end, states. `share`: of the interval at which the step ends. */
  #step(interval: number, day: number, length: number, share: number, moved: boolean): void {
    const { start, end } = this.#air;
    const lots = this.#lots;
    this.#options.listener?.start(day, length, start, lots, moved);
    for (let lot = 0; lot < lots.length; lot++) {
      foresee(lots[lot]!, length, start, this.#conditions);
      giveOff(lots[lot]!, lots[lot]!.foreseen);
    }
    this.#settler.settle(lots, end, this.#options.background, interval, share);
    this.#options.listener?.end(day, length, end, lots);
    for (let lot = 0; lot < lots.length; lot++) step(lots[lot]!, day, length, this.#air, this.#conditions);
  }
}

/** Room for the states of lots at the whole days from the start to the last: one piece of memory a lot, many small ones take longer to make than to fill. */
function makeRoomForStates(lots: readonly RunningLot[], lastDay: number): void {
  for (const { record, state } of lots) record.states = new Float64Array((lastDay + 1) * state.length);
}

/** Keeps what is wanted of a whole day. */
export function keepDay({ record, produce, state }: RunningLot, daily: KeptDaily): void {
  if (daily === "nothing") return;
  const { states } = record;
  if (states) {
    const from = record.quality.length * state.length;
    for (let index = 0; index < state.length; index++) states[from + index] = state[index]!;
  }
  record.quality.push(quality(produce, state));
}

/** Notes where lots begin. */
export function openRun(lots: readonly RunningLot[], daily: KeptDaily): void {
  for (const lot of lots) {
    if (isRipe(lot)) lot.record.ripeDay = 0;
    endingProgress(lot.produce, lot.state, lot.record.progress);
    keepDay(lot, daily);
  }
}

/** Carries lots that have not ended on beyond the horizon, in the air there. */
export function closeRun(
  lots: readonly RunningLot[],
  carryOn: CarryOn,
  air: StageAir,
  horizon: number,
): void {
  for (const lot of lots) if (Number.isNaN(lot.record.endDay)) carryOn.run(lot, air, horizon);
}
