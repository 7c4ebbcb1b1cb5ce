import type { Programme } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "./evaluate.js";
import { withProgramme } from "./moves.js";
import type { Prepared } from "./prepare.js";

/** Estimated change of the objective [g]: what lies in the room the places have, and what lies over it. */
export interface Change {
  readonly cost: number;
  readonly overflow: number;
}

/** Judges a change of one part's programme by estimate. */
export class Judge {
  readonly #prepared: Prepared;
  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  /** Estimated change if one part took another programme. */
  estimate(current: Evaluation, part: number, programme: Programme): Change {
    const changed = evaluatePrepared(this.#prepared, withProgramme(current.choice, part, programme));
    const overflow = changed.objective.overflow - current.objective.overflow;
    return { cost: changed.objective.total - current.objective.total - overflow, overflow };
  }
}
