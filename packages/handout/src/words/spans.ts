import type { Speaker } from "./speaker.js";

const daysPerWeek = 7;
/** Mean month of the Gregorian calendar [d]: 365.2425 / 12. */
const daysPerMonth = 365.2425 / 12;
const daysPerYear = 365.2425;

/** Up to here a span is told in days; up to the next in weeks; then in months. */
export const longestInDays = 20;
const longestInWeeks = 70;

/**
 * A span of days as a person would say it. The early end is rounded down and the late end to the nearest, so that the
 * words never promise more than the figures; the unit coarsens as the span grows.
 * @param early and @param late [d] ends of the range; any finite values ≥ 0, early ≤ late.
 */
export function spanWords(speaker: Speaker, early: number, late: number): string {
  if (late < 0.75) return speaker.say("span.none");
  if (early >= daysPerYear) return speaker.say("span.overYear");
  if (late > daysPerYear) return overYear(speaker, early);
  if (late <= longestInDays) return inDays(speaker, Math.floor(early), Math.round(late));
  if (late <= longestInWeeks) return inWeeks(speaker, early, Math.round(late / daysPerWeek));
  return inMonths(speaker, early, Math.round(late / daysPerMonth));
}

function inDays(speaker: Speaker, low: number, high: number): string {
  if (high <= 1 && low >= 1) return speaker.say("span.days.one");
  if (low < 1) return speaker.say("span.days.upTo", { count: Math.max(1, high) });
  return low === high
    ? speaker.say("span.days.about", { days: low })
    : speaker.say("span.days", { low, high });
}

function inWeeks(speaker: Speaker, early: number, high: number): string {
  const low = Math.floor(early);
  if (low < 2) return speaker.say("span.dayToWeeks", { count: high });
  if (early < 2 * daysPerWeek) return speaker.say("span.daysToWeeks", { low, count: high });
  const weeks = Math.floor(early / daysPerWeek);
  return weeks === high
    ? speaker.say("span.weeks.about", { weeks })
    : speaker.say("span.weeks", { low: weeks, high });
}

function inMonths(speaker: Speaker, early: number, high: number): string {
  if (early < 2 * daysPerWeek)
    return speaker.say("span.daysToMonths", { low: Math.max(1, Math.floor(early)), high });
  if (early < 2 * daysPerMonth)
    return speaker.say("span.weeksToMonths", { count: Math.floor(early / daysPerWeek), high });
  const months = Math.floor(early / daysPerMonth);
  return months === high
    ? speaker.say("span.months.about", { months })
    : speaker.say("span.months", { low: months, high });
}

function overYear(speaker: Speaker, early: number): string {
  if (early < daysPerMonth) return inMonths(speaker, early, 12);
  return speaker.say("span.monthsToOverYear", { count: Math.floor(early / daysPerMonth) });
}
