import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { Speaker } from "./speaker.js";

/** A calendar day carries no time zone: noon UTC keeps it the same day wherever it is written. */
const instant = (date: CalendarDate): Date => new Date(`${date}T12:00:00Z`);

/** What is written of a day: each sort has formats of its own, one for each language. */
const sorts = {
  day: { weekday: "short", day: "numeric", month: "long" },
  "short day": { weekday: "short", day: "numeric", month: "short" },
  date: { day: "numeric", month: "long", year: "numeric" },
  weekday: { weekday: "long" },
  month: { month: "long" },
} as const satisfies Readonly<Record<string, Intl.DateTimeFormatOptions>>;

/** Making one costs some hundred times what writing a day by it does. */
const formats = new Map<string, Intl.DateTimeFormat>();

function written(speaker: Speaker, date: Date, sort: keyof typeof sorts): string {
  const key = `${sort} ${speaker.tag}`;
  const format =
    formats.get(key) ?? new Intl.DateTimeFormat(speaker.tag, { ...sorts[sort], timeZone: "UTC" });
  formats.set(key, format);
  return format.format(date);
}

/** "Sat 13 June". */
export const dayWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, instant(date), "day").replace(",", "");

/** "Sat 13 Jun": for rows in which there is little room. */
export const shortDayWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, instant(date), "short day").replace(",", "");

/** "13 June 2026". */
export const fullDateWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, instant(date), "date");

/** The day that is `day` days after the first, as in `dayWords`. */
export const dayNumberWords = (speaker: Speaker, first: CalendarDate, day: number): string =>
  dayWords(speaker, addDays(first, day));

/** The name of a day of the week, 0 Sunday … 6 Saturday: "Friday". */
export const weekdayName = (speaker: Speaker, weekday: number): string =>
  written(speaker, new Date(Date.UTC(2000, 0, 2 + weekday, 12)), "weekday");

/** The name of a month, 1 to 12: "June". */
export const monthName = (speaker: Speaker, month: number): string =>
  written(speaker, new Date(Date.UTC(2000, month - 1, 15)), "month");
