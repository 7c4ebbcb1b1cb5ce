import type { Ending } from "../produce/lotState.js";
import { CarryOn } from "./carryOn.js";
import { lotRoom, type RunningLot, runAgain } from "./runningLot.js";
import type { StageAir } from "./stageAir.js";
import { perLot } from "./tape.js";
import type { Trajectory } from "./trajectory.js";

/** Where a lot ends; and, beyond the horizon, when it ripens and moves before that. */
export interface End {
  readonly day: number;
  readonly endedBy: Ending;
  readonly ripeDay: number;
  readonly stayStarts?: readonly number[];
}

/** Carries lots of a record on from where they are at its horizon, in other states and in other air than on record. */
export class BeyondHorizon {
  readonly #base: Trajectory;
  readonly #carryOn: CarryOn;
  /** Of each lot once it has been needed: itself, to be carried on again and again. */
  readonly #lots: (RunningLot | undefined)[] = [];
  /** For the states of whichever is carried on. */
  readonly #room = lotRoom();

  constructor(base: Trajectory) {
    this.#base = base;
    this.#carryOn = new CarryOn(base.inner.tree);
  }

  /** The end of a lot from a state at the horizon, in the air there. It gives off what it does on record, and what that state adds. */
  end(index: number, state: Float64Array, air: StageAir): End {
    const { grid } = this.#base.inner;
    const lot = this.#atHorizon(index);
    lot.state.set(state);
    this.#carryOn.run(lot, air, grid.steps * grid.stepDays);
    const { endDay: day, endedBy, ripeDay, stayStarts } = lot.record;
    const moves = lot.stays.length > lot.stay + 1;
    return moves ? { day, endedBy, ripeDay, stayStarts: stayStarts.slice() } : { day, endedBy, ripeDay };
  }

  /** A lot as it is at the horizon but for its state. */
  #atHorizon(index: number): RunningLot {
    const { running, tape, grid } = this.#base.inner;
    const { ripeDay, stayStarts } = this.#base.lots[index]!;
    const lot = this.#lots[index] ?? runAgain(running[index]!, this.#room);
    this.#lots[index] = lot;
    const entry = (tape.intervals - 1) * running.length + index;
    const { record, given } = lot;
    lot.stay = tape.stays[entry]!;
    given.conductance = tape.end.lots[entry * perLot]!;
    given.supply = tape.end.lots[entry * perLot + 1]!;
    given.emission = tape.end.lots[entry * perLot + 2]!;
    given.surface = tape.end.lots[entry * perLot + 3]!;
    given.saturated = false;
    lot.emissionOf = -1;
    record.endDay = Number.NaN;
    record.ripeDay = ripeDay <= grid.steps * grid.stepDays ? ripeDay : Number.POSITIVE_INFINITY;
    for (let stay = 0; stay < lot.stays.length; stay++) {
      record.stayStarts[stay] = stay <= lot.stay ? stayStarts[stay]! : Number.POSITIVE_INFINITY;
    }
    return lot;
  }
}
