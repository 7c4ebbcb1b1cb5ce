import { type SafetyLimits, usualSafetyLimits } from "./limits.js";

const hoursPerDay = 24;

/**
 * Warmest air [°C] still taken for a (warm) refrigerator; above it cut produce counts as left out. Inferred: the warmest of 252
 * household refrigerators averaged 11.4 °C (James & Evans 1992, abstract), and no room is that cold where people eat.
 */
export const warmestRefrigerator = 12;

/**
 * Share of its safe time cut produce uses up a day [1/d] at a temperature [°C]. Whole produce uses none.
 *
 * Cut produce that needs time and temperature control: the days of cold holding less one (the day of preparation is the first) up to its
 * temperature; time as the control in a warm refrigerator (to 12 °C); the hours out of refrigeration above that. Other cut produce: only the last, its quality
 * ends it otherwise. Sources: see `SafetyLimits`.
 */
export function cutSafetyRate(
  celsius: number,
  timeTemperatureControl: boolean,
  limits: SafetyLimits = usualSafetyLimits,
): number {
  if (celsius > limits.hotAbove) return hoursPerDay / limits.unrefrigeratedHoursWhenHot;
  if (celsius > warmestRefrigerator) return hoursPerDay / limits.unrefrigeratedHours;
  if (!timeTemperatureControl) return 0;
  if (celsius > limits.coldHolding) return hoursPerDay / limits.timeControlHours;
  return 1 / (limits.readyToEatDays - 1);
}
