import type { Correction } from "../state/corrections.js";
import { type EnteredAmount, mostGrams } from "../state/enteredAmount.js";

const ripenesses = ["unripe", "turning", "ripe", "very ripe"] as const;
const longestUnit = 40;
const mostDays = 60;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const amountIn = (value: unknown, unit: unknown): EnteredAmount | undefined =>
  typeof value === "number" && value > 0 && value <= mostGrams && typeof unit === "string" && unit !== ""
    ? { value, unit: unit.slice(0, longestUnit) }
    : undefined;

/** An amount as it was entered, or the grams that an older version kept. */
const restoreAmount = ({ amount, grams }: Record<string, unknown>): EnteredAmount | undefined =>
  isRecord(amount) ? amountIn(amount.value, amount.unit) : amountIn(grams, "g");

/** What can be used of a correction that was kept; undefined where it is none. */
export function restoreCorrection(value: unknown): Correction | undefined {
  if (!isRecord(value)) return undefined;
  const { commodity, form, tops, washed, leftOut, extraDays } = value;
  const ripeness = ripenesses.find((word) => word === value.ripeness);
  const amount = restoreAmount(value);
  return {
    ...(typeof commodity === "string" && { commodity }),
    ...(amount !== undefined && { amount }),
    ...(ripeness !== undefined && { ripeness }),
    ...((form === "whole" || form === "cut") && { form }),
    ...(typeof tops === "boolean" && { tops }),
    ...(typeof washed === "boolean" && { washed }),
    ...(typeof extraDays === "number" && extraDays >= 0 && extraDays <= mostDays && { extraDays }),
    ...(typeof leftOut === "boolean" && { leftOut }),
  };
}
