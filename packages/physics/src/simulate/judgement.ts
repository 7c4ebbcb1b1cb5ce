import type { LotOutcome, SimulatedLot } from "./simulation.js";

/** A lot put elsewhere (same index, other stays, mass or form), taken away (`to` absent), or added (`lot` is "new"). */
export interface LotChange {
  readonly lot: number | "new";
  readonly to?: SimulatedLot | undefined;
}

export interface JudgeOptions {
  /** A lot whose estimated end may be wrong by more than this share of its life is run again. 0.01 unless told. */
  readonly tolerance?: number;
  /** How often lots are looked for that are to be followed again; 1 unless told. More rounds see what those do to others. */
  readonly rounds?: number;
  /** Give quality at each whole day. False unless told. */
  readonly daily?: boolean;
  /** A lot whose estimated end moves by less than this share of its life comes with an empty `quality`. 0 unless told. */
  readonly sameLife?: number;
  /**
   * Told what becomes of the changed lots (in the order of the changes); if it says no, nobody need know what they do to the others, and the answer
   * holds these alone.
   */
  readonly worthKnowing?: (changed: readonly JudgedLot[]) => boolean;
}

/** What a change does to one lot. `lot` is its index in the simulation; added lots are numbered on from the last. */
export interface JudgedLot {
  readonly lot: number;
  readonly outcome: LotOutcome;
  /** True where it was followed in the changed air, false where its end was shifted by an estimate. */
  readonly followed: boolean;
}
