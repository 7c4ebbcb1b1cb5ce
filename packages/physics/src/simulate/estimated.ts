import type { LotOutcome } from "./simulation.js";

/** Where the quality of whole days is wanted of an estimate: where its end may be wrong by at most a share of the life, and moves by a share of it or more. */
export interface WantedQuality {
  readonly daily: boolean;
  readonly tolerance: number;
  readonly sameLife: number;
}

/** What changed air is estimated to do to a lot. */
export interface Estimate {
  /** Left out where doubtful. */
  readonly outcome?: LotOutcome;
  /** By how much it may be wrong, as a share of the life: its shift, less so the more days (and with them samples) the life has. */
  readonly error?: number;
  /** Fruit ripens at another pace, which changes what it gives off and when it is moved. */
  readonly doubtful: boolean;
  /** Share by which the ethylene of a box it is in would change by that, at most. */
  readonly airShift: number;
}
