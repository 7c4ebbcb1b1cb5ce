import { safetyLimitsFrom } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { BoundPlace } from "../problem/bindKitchen.js";
import type { Problem } from "../problem/problem.js";
import type { Programme } from "../problem/programme.js";
import { hasSafeTime } from "./underControl.js";

const hoursPerDay = 24;

/** Sums of stays are rounded this little; nothing else is forgiven. */
const rounding = 1e-9;

/**
 * Days cut produce may be kept in a place [d]; Infinity where no limit binds. Out of the refrigerator: two hours, one where it is hot. In it
 * only kinds under time and temperature control are limited: cold enough, seven days with the day of preparation as the first, so six later;
 * warmer, four hours. Limits and sources: the catalogue's safety table.
 */
export function safeDaysIn(
  { catalogue }: Problem,
  { produce }: BoundLot,
  { place, cold }: BoundPlace,
): number {
  const limits = safetyLimitsFrom(catalogue.safety);
  if (!cold) {
    const hot = place.temperature > limits.hotAbove;
    return (hot ? limits.unrefrigeratedHoursWhenHot : limits.unrefrigeratedHours) / hoursPerDay;
  }
  if (!produce.timeTemperatureControl) return Number.POSITIVE_INFINITY;
  return place.temperature <= limits.coldHolding
    ? limits.readyToEatDays - 1
    : limits.timeControlHours / hoursPerDay;
}

/**
 * Share of the safe time of cut produce used up before it came home (or by an earlier plan): days since cutting, where told, count as spent in the best place this kitchen
 * has for it, for nobody says that it lay better. Without a refrigerator, or with one too warm for its kind, a day is too long.
 */
function usedBefore(problem: Problem, lot: BoundLot): number {
  // What an earlier plan had used up runs on: it is never reckoned anew.
  if (lot.carried) return lot.carried.safeTimeUsed;
  const best = Math.max(...problem.places.map((place) => safeDaysIn(problem, lot, place)));
  return lot.lot.extraDays / best;
}

/**
 * Days from the first one until the safe time of cut produce is used up [d]. −1 when it is used up on arrival; Infinity for whole produce
 * and where no limit binds.
 *
 * @param stayStarts day on which each stay of the programme begins
 */
export function safeDaysLeft(
  problem: Problem,
  lot: BoundLot,
  programme: Programme,
  stayStarts: readonly number[],
): number {
  if (!hasSafeTime(lot)) return Number.POSITIVE_INFINITY;
  let used = usedBefore(problem, lot);
  if (used > 1 + rounding) return -1;
  for (const [index, stay] of programme.stays.entries()) {
    const allowed = safeDaysIn(problem, lot, problem.places[stay.place]!);
    const end = stayStarts[index + 1] ?? Number.POSITIVE_INFINITY;
    const last = stayStarts[index]! + Math.max(0, 1 - used) * allowed;
    if (last < end) return last;
    used += (end - stayStarts[index]!) / allowed;
  }
  return Number.POSITIVE_INFINITY;
}

/**
 * Share of the safe time of cut produce used up by a day [d from the first], however it lay until then; 0 for whole produce. May be over 1.
 *
 * @param stayStarts day on which each stay of the programme begins
 */
export function safeTimeUsed(
  problem: Problem,
  lot: BoundLot,
  programme: Programme,
  stayStarts: readonly number[],
  day: number,
): number {
  if (!hasSafeTime(lot)) return 0;
  return programme.stays.reduce(
    (used, stay, index) => {
      const end = Math.min(day, stayStarts[index + 1] ?? Number.POSITIVE_INFINITY);
      const days = Math.max(0, end - stayStarts[index]!);
      return days === 0 ? used : used + days / safeDaysIn(problem, lot, problem.places[stay.place]!);
    },
    usedBefore(problem, lot),
  );
}

/** Share of the safe time of cut produce that some hours out of the refrigerator use up: by the stricter limit where any place of the kitchen is hot. */
export function usedOutOfRefrigerator({ catalogue, kitchen }: Problem, hours: number): number {
  const limits = safetyLimitsFrom(catalogue.safety);
  const warmest = Math.max(kitchen.room.temperature, ...kitchen.places.map(({ temperature }) => temperature));
  const allowed = warmest > limits.hotAbove ? limits.unrefrigeratedHoursWhenHot : limits.unrefrigeratedHours;
  return hours / allowed;
}

/**
 * Hard rule, never weighed against anything: the last day on which cut produce may be eaten, before its safe time is used up. −1 when it is
 * used up on arrival; Infinity where no limit binds.
 */
export const lastSafeDay = (...asked: Parameters<typeof safeDaysLeft>): number =>
  Math.floor(safeDaysLeft(...asked) + rounding);
