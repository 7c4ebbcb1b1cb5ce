import type { EatingEffect } from "./parts.js";

/** Harm to eating at one temperature: quality lost a day [1/d], and the most these effects can take [1]. */
export interface HarmAtTemperature {
  readonly harmRate: number;
  readonly harmMost: number;
}

/**
 * The effects whose window (above … below [°C], ends left out) holds a temperature, together: each takes its full loss evenly over its days, and none
 * takes more than its full loss. Source of each effect: its catalogue record; the even course is inferred.
 */
export function harmAtTemperature(effects: readonly EatingEffect[], celsius: number): HarmAtTemperature {
  let harmRate = 0;
  let harmMost = 0;
  for (const { below, above, days, loss } of effects) {
    if (celsius <= above || celsius >= below) continue;
    harmRate += loss / days;
    harmMost += loss;
  }
  return { harmRate, harmMost: Math.min(1, harmMost) };
}
