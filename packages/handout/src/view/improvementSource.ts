import type { Improvement, Improvements } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import type { HandoutContext } from "./context.js";

/** Where the saving of one change comes from, and what its range is made of. */
export function improvementSource(
  { speaker, units }: HandoutContext,
  { expectedWaste }: Improvements,
  { gain, plannerNoise, modelReach }: Improvement,
): string[] {
  const mass = (grams: number): string => massWords(speaker, units, Math.max(0, grams));
  return [
    speaker.say("beside.from", {
      before: mass(expectedWaste.value),
      after: mass(expectedWaste.value - gain.value),
    }),
    speaker.say("beside.from.range", {
      noise: mass(Math.max(1, plannerNoise)),
      reach: mass(Math.max(1, modelReach.below, modelReach.above)),
    }),
  ];
}
