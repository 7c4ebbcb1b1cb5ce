import type { Ending, LotState } from "../produce/lotState.js";
import { stateNames } from "../produce/lotState.js";
import type { RunningLot } from "./runningLot.js";
import type { LotOutcome } from "./simulation.js";

/** The states of a lot at whole days, from one row of them. */
function dailyStates(states: Float64Array | undefined): LotState[] {
  const size = stateNames.length;
  const days = (states?.length ?? 0) / size;
  return Array.from({ length: days }, (_, day) => states!.slice(day * size, (day + 1) * size));
}

/** What became of a lot that was run to the horizon, and carried on beyond it to its end. */
export function lotOutcome({ record }: RunningLot): LotOutcome {
  return {
    endDay: record.endDay,
    endedBy: record.endedBy,
    beyondHorizon: record.beyondHorizon,
    ripeDay: record.ripeDay,
    stayStarts: record.stayStarts,
    daily: dailyStates(record.states),
    quality: record.quality,
  };
}

/** The same, the states of its days taken apart only when asked for: a planner simulates a kitchen a hundred times and asks for hardly any. */
export class RecordedOutcome implements LotOutcome {
  readonly endDay: number;
  readonly endedBy: Ending;
  readonly beyondHorizon: boolean;
  readonly ripeDay: number;
  readonly stayStarts: readonly number[];
  readonly quality: readonly number[];
  readonly #states: Float64Array | undefined;
  #daily: readonly LotState[] | undefined;

  constructor({ record }: RunningLot) {
    this.endDay = record.endDay;
    this.endedBy = record.endedBy;
    this.beyondHorizon = record.beyondHorizon;
    this.ripeDay = record.ripeDay;
    this.stayStarts = record.stayStarts;
    this.quality = record.quality;
    this.#states = record.states;
  }

  get daily(): readonly LotState[] {
    this.#daily ??= dailyStates(this.#states);
    return this.#daily;
  }
}
