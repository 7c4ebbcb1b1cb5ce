import { sameTime } from "./lotMoves.js";
import type { Tape } from "./tape.js";

/** Steps of a tape put together: the first and the last step of each part, and where it begins (and the last ends) [d]. */
export interface CoarseSteps {
  readonly count: number;
  readonly first: Int32Array;
  readonly last: Int32Array;
  readonly days: Float64Array;
  readonly moved: Uint8Array;
}

/** Length of the parts in which changed lots are followed, from each day on [d]; each divides a day. */
const schedule = [
  { from: 0, length: 0.25 },
  { from: 1, length: 0.5 },
  { from: 4, length: 1 },
];

/**
 * Puts steps together into longer parts, wherever nothing moved in between. Between moves the air changes slowly, and the more so the later, so a
 * changed lot can be followed in longer steps than those on record.
 */
export function coarseSteps(tape: Tape): CoarseSteps {
  const first: number[] = [];
  const partOf = (step: number): number => {
    const day = tape.days[step]! + sameTime;
    const { length } = schedule.findLast(({ from }) => day >= from)!;
    return Math.floor(day / length) * length;
  };
  for (let step = 0; step < tape.intervals; step++) {
    if (step === 0 || tape.moved[step] === 1 || partOf(step) !== partOf(step - 1)) first.push(step);
  }
  const last = first.map((_, part) => (first[part + 1] ?? tape.intervals) - 1);
  return {
    count: first.length,
    first: Int32Array.from(first),
    last: Int32Array.from(last),
    days: Float64Array.from([...first, tape.intervals], (step) => tape.days[step]!),
    moved: Uint8Array.from(first, (step) => tape.moved[step]!),
  };
}
