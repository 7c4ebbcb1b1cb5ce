import type { AirTree } from "../climate/airTree.js";
import type { CoarseSteps } from "./coarse.js";
import type { RunningLot } from "./runningLot.js";
import type { Background, GivenOffByBox } from "./settleAir.js";
import { perLot, type Tape, type TapeSide } from "./tape.js";

/** A background with room for some steps, to be filled by `setBackgroundWithout`. */
export const emptyBackground = ({ count, days, moved }: CoarseSteps, tree: AirTree): Background => ({
  intervals: count,
  days,
  moved,
  start: emptySums(count * tree.size),
  end: emptySums(count * tree.size),
});

const emptySums = (length: number): GivenOffByBox => ({
  conductance: new Float64Array(length),
  supply: new Float64Array(length),
  emission: new Float64Array(length),
});

/** Fills in what all lots but some give off, from the record of a run: the air those some would be followed in. */
export function setBackgroundWithout(
  tape: Tape,
  { first, last }: CoarseSteps,
  tree: AirTree,
  running: readonly RunningLot[],
  leftOut: readonly number[],
  background: Background,
): void {
  setSide(tape, tape.start, first, tree, running, leftOut, background.start);
  setSide(tape, tape.end, last, tree, running, leftOut, background.end);
}

function setSide(
  tape: Tape,
  side: TapeSide,
  steps: Int32Array,
  { size }: AirTree,
  running: readonly RunningLot[],
  leftOut: readonly number[],
  out: GivenOffByBox,
): void {
  for (let part = 0; part < steps.length; part++) {
    const step = steps[part]!;
    for (let box = 0; box < size; box++) {
      out.conductance[part * size + box] = side.conductance[step * size + box]!;
      out.supply[part * size + box] = side.supply[step * size + box]!;
      out.emission[part * size + box] = side.emission[step * size + box]!;
    }
    for (let index = 0; index < leftOut.length; index++) {
      const entry = step * running.length + leftOut[index]!;
      const { box } = running[leftOut[index]!]!.stays[tape.stays[entry]!]!;
      if (box < size) takeOut(out, side, part * size + box, entry * perLot);
    }
  }
}

/** Takes one lot out of a sum. What rounding leaves below nothing is nothing. */
function takeOut(sums: GivenOffByBox, { lots }: TapeSide, sum: number, lot: number): void {
  sums.conductance[sum] = Math.max(0, sums.conductance[sum]! - lots[lot]!);
  sums.supply[sum] = Math.max(0, sums.supply[sum]! - lots[lot + 1]!);
  sums.emission[sum] = Math.max(0, sums.emission[sum]! - lots[lot + 2]!);
}
