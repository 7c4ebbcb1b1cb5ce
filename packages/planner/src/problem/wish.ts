import { addDays, type CalendarDate, dayOfWeek, daysBetween } from "@keepwright/quantities";
import { told } from "./findingCode.js";
import type { Finding } from "./inputError.js";
import type { Lot } from "./lot.js";
import { shownValue } from "./schemaFindings.js";
import { mostDaysAhead, type Wanted, type WantedWord, type Weekday, weekdays } from "./wanted.js";

/** A wish with its day counted from the first one, and the days on which it is served. */
export interface Wish {
  readonly when: WantedWord;
  /** The day named [d from the first day]. */
  readonly day: number;
  /** First and last day [d from the first day] on which a portion is as wanted; Infinity where any later one will do. */
  readonly first: number;
  readonly last: number;
}

const isWeekday = (day: string): day is Weekday => (weekdays as readonly string[]).includes(day);

/** Days from the first day to the one wanted. A weekday is the next one, a week off where it is the first day's own. NaN for no date. */
function dayNumber(day: Wanted["day"], from: CalendarDate): number {
  if (typeof day === "number") return day;
  if (isWeekday(day)) return ((weekdays.indexOf(day) - dayOfWeek(from) + 6) % 7) + 1;
  try {
    return daysBetween(from, day);
  } catch {
    return Number.NaN;
  }
}

/** What is wrong with the day a lot is wanted for, once the first day is known. */
export function wishFindings({ id, wanted }: Lot, from: CalendarDate): Finding[] {
  if (!wanted) return [];
  const number = dayNumber(wanted.day, from);
  if (number >= 0 && number <= mostDaysAhead) return [];
  const value = Number.isNaN(number)
    ? `it is wanted for ${wanted.day}, which is no day of the calendar`
    : `it is wanted for ${wanted.day}, which is ${number < 0 ? "before the first day" : `more than ${mostDaysAhead} days ahead`}`;
  const remedy = `Give a day from ${from} to ${addDays(from, mostDaysAhead)}, or leave "wanted" out.`;
  const code = Number.isNaN(number)
    ? "wanted on no day"
    : number < 0
      ? "wanted before the first day"
      : "wanted too far ahead";
  const last = addDays(from, mostDaysAhead);
  const values = { lot: shownValue(id), day: wanted.day, most: mostDaysAhead, from, last };
  return [{ thing: `lot ${shownValue(id)}`, value, remedy, ...told(code, values) }];
}

/** The wish of a lot, if it has one that `wishFindings` finds nothing wrong with. */
export function wishOf({ wanted }: Pick<Lot, "wanted">, from: CalendarDate): Wish | undefined {
  if (!wanted) return undefined;
  const { when } = wanted;
  const day = dayNumber(wanted.day, from);
  const first = when === "by" ? 0 : when === "after" ? day + 1 : day;
  const last = when === "by" || when === "on" ? day : Number.POSITIVE_INFINITY;
  return { when, day, first, last };
}

/** What is wanted in a plan that begins some days later: its day counted from then; nothing where that day has gone by. */
export function wantedThen(wish: Wish | undefined, later: number): Pick<Lot, "wanted"> {
  if (!wish || wish.day < later) return {};
  return { wanted: { when: wish.when, day: wish.day - later } };
}
