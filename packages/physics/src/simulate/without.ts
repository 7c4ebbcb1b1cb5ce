import type { AirTree } from "../climate/airTree.js";
import type { RunningLot } from "./runningLot.js";
import type { Background, GivenOffByBox } from "./settleAir.js";
import { perLot, type Tape, type TapeSide } from "./tape.js";

/** What all lots but some give off, from the record of a run: the air those some would be followed in. */
export function backgroundWithout(
  tape: Tape,
  tree: AirTree,
  running: readonly RunningLot[],
  leftOut: readonly number[],
): Background {
  const start = copyOf(tape.start, tape.intervals * tree.size);
  const end = copyOf(tape.end, tape.intervals * tree.size);
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
  return { intervals: tape.intervals, days: tape.days, moved: tape.moved, start, end };
}

const copyOf = (side: GivenOffByBox, length: number): GivenOffByBox => ({
  conductance: side.conductance.slice(0, length),
  supply: side.supply.slice(0, length),
  emission: side.emission.slice(0, length),
});

/** Takes one lot out of a sum. What rounding leaves below nothing is nothing. */
function takeOut(sums: GivenOffByBox, { lots }: TapeSide, sum: number, lot: number): void {
  sums.conductance[sum] = Math.max(0, sums.conductance[sum]! - lots[lot]!);
  sums.supply[sum] = Math.max(0, sums.supply[sum]! - lots[lot + 1]!);
  sums.emission[sum] = Math.max(0, sums.emission[sum]! - lots[lot + 2]!);
}
