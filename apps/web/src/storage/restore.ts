import { ordinaryKitchens } from "@keepwright/planner";
import type { Correction, Corrections } from "../state/corrections.js";
import { dayRange, type PlannerState, peopleRange } from "../state/plannerState.js";
import { workedExample } from "../state/workedExample.js";

/** Longest haul text kept; the reader caps lots long before it. */
const longestText = 200_000;

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const wholeNumber = (value: unknown, range: { least: number; most: number }, otherwise: number): number =>
  typeof value === "number" && Number.isInteger(value) && value >= range.least && value <= range.most
    ? value
    : otherwise;

function restoreCorrection(value: unknown): Correction | undefined {
  if (!isRecord(value)) return undefined;
  const { commodity, grams, ripeness, form, tops, leftOut } = value;
  return {
    ...(typeof commodity === "string" && { commodity }),
    ...(typeof grams === "number" && grams > 0 && grams <= 200_000 && { grams }),
    ...((ripeness === "unripe" ||
      ripeness === "turning" ||
      ripeness === "ripe" ||
      ripeness === "very ripe") && { ripeness }),
    ...((form === "whole" || form === "cut") && { form }),
    ...(typeof tops === "boolean" && { tops }),
    ...(typeof leftOut === "boolean" && { leftOut }),
  };
}

function restoreCorrections(value: unknown): Corrections {
  if (!isRecord(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, each]) => {
      const correction = restoreCorrection(each);
      return correction ? [[key, correction]] : [];
    }),
  );
}

/**
 * The one door for whatever was saved before, by this version or an older one: repairs what can be repaired and keeps the person's
 * words whatever else is broken. Anything that is not a saved state at all gives the worked example.
 */
export function restore(saved: unknown): PlannerState {
  if (!isRecord(saved) || typeof saved.text !== "string") return workedExample;
  const kitchen = saved.kitchen;
  return {
    version: 1,
    text: saved.text.slice(0, longestText),
    corrections: restoreCorrections(saved.corrections),
    kitchen:
      typeof kitchen === "string" && Object.hasOwn(ordinaryKitchens, kitchen)
        ? (kitchen as PlannerState["kitchen"])
        : "ordinary",
    people: wholeNumber(saved.people, peopleRange, workedExample.people),
    days: wholeNumber(saved.days, dayRange, workedExample.days),
    units: saved.units === "us" ? "us" : "metric",
  };
}
