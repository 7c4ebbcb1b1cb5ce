import { endingProgress, endings, type LotOutcome, type Produce, at as position } from "@keepwright/physics";
import type { Course } from "./reason.js";

const ageingAt = endings.indexOf("senescence");

/** The states of a lot at each whole day, as its readers see them. */
export function courseOf(produce: Produce, { daily, quality, endDay }: LotOutcome): Course {
  const progress = daily.map((state) => {
    const out = new Float64Array(endings.length);
    endingProgress(produce, state, out);
    return out;
  });
  return {
    ripeness: daily.map((state) => state[position.ripeness]!),
    waterLost: daily.map((state) => state[position.waterLost]!),
    ageing: progress.map((one) => one[ageingAt]!),
    lifeUsed: progress.map((one, day) => (day >= endDay ? 1 : Math.min(1, Math.max(...one)))),
    quality: [...quality],
  };
}
