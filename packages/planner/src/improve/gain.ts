import { type Followed, wasteFollowed } from "./followed.js";
import { modelReach, type Reach } from "./modelReach.js";

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
/** From the least to the most of some values. */
export const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/** Waste avoided [g], with its range of 80 % and what the range is made of. */
export interface Gain {
  readonly gain: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
    readonly unit: "g";
  };
  readonly plannerNoise: number;
  readonly modelReach: Reach;
}

/**
 * Waste that is avoided, plan against plan of the same seed. The planner's noise is how far apart the unchanged plans lie, or the gains themselves
 * where they lie further; the model's reach is added to it as independent, for a range that holds 80 %.
 *
 * @param before with nothing changed, one for each seed
 * @param noise how far apart the waste of those lies [g]
 * @param after with the change, one for each of the first seeds, at least one
 */
export function gainOf(before: readonly Followed[], noise: number, after: readonly Followed[]): Gain {
  const gains = after.map((one, index) => wasteFollowed(before[index]!) - wasteFollowed(one));
  const value = mean(gains);
  const plannerNoise = Math.max(noise, span(gains));
  const reach = modelReach(before[0]!, after[0]!);
  return {
    gain: {
      value,
      low: value - Math.hypot(plannerNoise, reach.below),
      high: value + Math.hypot(plannerNoise, reach.above),
      unit: "g",
    },
    plannerNoise,
    modelReach: reach,
  };
}
