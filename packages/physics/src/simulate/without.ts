import type { AirTree } from "../climate/airTree.js";
import type { RunningLot } from "./runningLot.js";
import type { Background, GivenOffByBox } from "./settleAir.js";
import { perLot, type Tape, type TapeSide } from "./tape.js";

/** A background of the size of a tape, to be filled by `setBackgroundWithout`. */
export const emptyBackground = (tape: Tape, tree: AirTree): Background => ({
  intervals: tape.intervals,
  days: tape.days,
  moved: tape.moved,
  start: emptySums(tape.intervals * tree.size),
  end: emptySums(tape.intervals * tree.size),
});

const emptySums = (length: number): GivenOffByBox => ({
  conductance: new Float64Array(length),
  supply: new Float64Array(length),
  emission: new Float64Array(length),
});

/** Fills in what all lots but some give off, from the record of a run: the air those some would be followed in. */
export function setBackgroundWithout(
  tape: Tape,
  tree: AirTree,
  running: readonly RunningLot[],
  leftOut: readonly number[],
  { start, end }: Background,
): void {
  copy(tape.start, start);
  copy(tape.end, end);
  for (const lot of leftOut) {
    const { stays } = running[lot]!;
    for (let step = 0; step < tape.intervals; step++) {
      const entry = step * running.length + lot;
      const { box } = stays[tape.stays[entry]!]!;
      if (box === tree.size) continue;
      takeOut(start, tape.start, step * tree.size + box, entry * perLot);
      takeOut(end, tape.end, step * tree.size + box, entry * perLot);
    }
  }
}

function copy(from: GivenOffByBox, to: GivenOffByBox): void {
  for (let entry = 0; entry < to.emission.length; entry++) {
    to.conductance[entry] = from.conductance[entry]!;
    to.supply[entry] = from.supply[entry]!;
    to.emission[entry] = from.emission[entry]!;
  }
}

/** Takes one lot out of a sum. What rounding leaves below nothing is nothing. */
function takeOut(sums: GivenOffByBox, { lots }: TapeSide, sum: number, lot: number): void {
  sums.conductance[sum] = Math.max(0, sums.conductance[sum]! - lots[lot]!);
  sums.supply[sum] = Math.max(0, sums.supply[sum]! - lots[lot + 1]!);
  sums.emission[sum] = Math.max(0, sums.emission[sum]! - lots[lot + 2]!);
}
