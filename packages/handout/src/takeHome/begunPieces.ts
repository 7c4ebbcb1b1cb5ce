import type { PlannedLot } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import { isPast } from "../view/safeTime.js";

/** A whole piece that the plan eats over several days, so that it is cut from the first of them on and has a last safe day. */
export interface BegunPiece {
  readonly cut: CalendarDate;
  readonly last: CalendarDate;
  /** Portions the plan has of it after that: not to be eaten then. */
  readonly tooLate: number;
}

/** Pieces of a part that have a last safe day once they are begun, in order of date; none where it is thrown away. */
export const begunPieces = (lot: PlannedLot): BegunPiece[] =>
  isPast(lot)
    ? []
    : (lot.cutOpen ?? [])
        .flatMap(({ date, safeUntil, portionsAfter }) =>
          safeUntil === undefined ? [] : [{ cut: date, last: safeUntil, tooLate: portionsAfter }],
        )
        .sort((one, other) => (one.cut < other.cut ? -1 : one.cut > other.cut ? 1 : 0));
