import type { LotOutcome } from "@keepwright/physics";
import type { PlannedLot } from "../problem/plan.js";
import { eatingHabits } from "../rules/weights.js";
import { chanceLeft } from "./cutOpen.js";
import { chanceOn, chanceWhenEaten } from "./life.js";
import type { Subject } from "./subject.js";
import type { Occasion } from "./terms.js";

/** Chance of having to be thrown away at an occasion, from a replayed life and the spread the plan tells. */
export const chanceAgain = (
  subject: Subject,
  part: PlannedLot,
  endDay: number,
  { left, day }: Occasion,
): number =>
  left
    ? chanceLeft(subject, part, chanceOn(subject, part, day, endDay))
    : chanceWhenEaten(subject, part, day, endDay);

/** Quality on a day; that of the last simulated day beyond it. */
const qualityOn = ({ quality }: LotOutcome, day: number): number =>
  quality[Math.min(day, quality.length - 1)] ?? Number.NaN;

/** Quality of what is still good when eaten: the mean over portions eaten in time and late, by how many of each are good. */
export function qualityAgain(
  subject: Subject,
  part: PlannedLot,
  outcome: LotOutcome,
  { left, day }: Occasion,
): number {
  if (left) return qualityOn(outcome, day);
  const { lateShare, lateDays } = eatingHabits;
  const good = (on: number): number => 1 - chanceOn(subject, part, on, outcome.endDay);
  const inTime = (1 - lateShare) * good(day);
  const late = lateShare * good(day + lateDays);
  if (inTime + late <= 0) return 0;
  return (inTime * qualityOn(outcome, day) + late * qualityOn(outcome, day + lateDays)) / (inTime + late);
}
