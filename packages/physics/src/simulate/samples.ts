import { stateNames } from "../produce/lotState.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, blankConditions } from "./airAround.js";
import type { DayAir } from "./dayAir.js";
import type { Grid } from "./grid.js";
import type { RunningLot } from "./runningLot.js";
import { perLot, type Tape } from "./tape.js";

const size = stateNames.length;

/** For each day of the horizon, the step of the tape that begins nearest a time of the day (0.5: its middle). */
export function sampleSteps(tape: Tape, grid: Grid, time: number): number[] {
  const samples: number[] = [];
  let step = 0;
  for (let day = 0; day < grid.steps * grid.stepDays; day++) {
    const away = (of: number): number => Math.abs(tape.days[of]! - day - time);
    while (step + 1 < tape.intervals && away(step + 1) < away(step)) step++;
    samples.push(step);
  }
  return samples;
}

/**
 * d(state)/dt of each lot at each sample in the mean air of its day; flat by sample, lot and state.
 */
export function sampleRates(
  tape: Tape,
  running: readonly RunningLot[],
  samples: readonly number[],
  air: DayAir,
): Float64Array {
  const out = new Float64Array(samples.length * running.length * size);
  const conditions = blankConditions();
  const state = new Float64Array(size);
  const rates = new Float64Array(size);
  const { lots } = tape.start;
  for (const [sample, step] of samples.entries()) {
    for (let lot = 0; lot < running.length; lot++) {
      const entry = step * running.length + lot;
      const stay = running[lot]!.stays[tape.stays[entry]!]!;
      const where = sample * air.width + stay.box;
      const [emission, surface] = [lots[entry * perLot + 2]!, lots[entry * perLot + 3]!];
      airAround(stay, surface, emission, air.density[where]!, air.ethylene[where]!, conditions);
      for (let index = 0; index < size; index++) state[index] = tape.states[entry * size + index]!;
      stateRates(stay.at, state, conditions, rates);
      const to = (sample * running.length + lot) * size;
      for (let index = 0; index < size; index++) out[to + index] = rates[index]!;
    }
  }
  return out;
}
