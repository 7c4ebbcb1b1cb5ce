/**
 * A day on the civil calendar, written as in ISO 8601 ("2026-06-13"). It carries no clock and no time zone:
 * a plan speaks of days, and the caller says which day is the first.
 */
export type CalendarDate = string & { readonly __calendarDate?: true };

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;
const millisecondsPerDay = 86_400_000;

function epochDay(date: CalendarDate): number {
  const parts = pattern.exec(date);
  const time = parts ? Date.UTC(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])) : Number.NaN;
  if (Number.isNaN(time) || new Date(time).toISOString().slice(0, 10) !== date) {
    throw new RangeError(
      `“${date}” is not a day of the calendar. Write it as year-month-day, for example 2026-06-13.`,
    );
  }
  return time / millisecondsPerDay;
}

/** Checks a text and returns it as a day. Throws RangeError naming the text when it is no day of the calendar. */
export function calendarDate(text: string): CalendarDate {
  epochDay(text);
  return text;
}

/** The day `days` after `date` (before it, when negative). Fractions of a day are cut towards the start of the day. */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  return new Date((epochDay(date) + Math.floor(days)) * millisecondsPerDay).toISOString().slice(0, 10);
}

/** Whole days from `earlier` to `later`; negative when `later` comes first. */
export const daysBetween = (earlier: CalendarDate, later: CalendarDate): number =>
  epochDay(later) - epochDay(earlier);

/** Day of the week: 0 Sunday … 6 Saturday. */
export const dayOfWeek = (date: CalendarDate): number =>
  new Date(epochDay(date) * millisecondsPerDay).getUTCDay();
