import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { Speaker } from "./speaker.js";

/** A calendar day carries no time zone: noon UTC keeps it the same day wherever it is written. */
const instant = (date: CalendarDate): Date => new Date(`${date}T12:00:00Z`);

const written = (speaker: Speaker, date: CalendarDate, options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(speaker.tag, { ...options, timeZone: "UTC" }).format(instant(date));

/** "Sat 13 June". */
export const dayWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, date, { weekday: "short", day: "numeric", month: "long" }).replace(",", "");

/** "Sat 13 Jun": for rows in which there is little room. */
export const shortDayWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, date, { weekday: "short", day: "numeric", month: "short" }).replace(",", "");

/** "13 June 2026". */
export const fullDateWords = (speaker: Speaker, date: CalendarDate): string =>
  written(speaker, date, { day: "numeric", month: "long", year: "numeric" });

/** The day that is `day` days after the first, as in `dayWords`. */
export const dayNumberWords = (speaker: Speaker, first: CalendarDate, day: number): string =>
  dayWords(speaker, addDays(first, day));

/** The name of a day of the week, 0 Sunday … 6 Saturday: "Friday". */
export const weekdayName = (speaker: Speaker, weekday: number): string =>
  new Intl.DateTimeFormat(speaker.tag, { weekday: "long", timeZone: "UTC" }).format(
    new Date(Date.UTC(2000, 0, 2 + weekday, 12)),
  );

/** The name of a month, 1 to 12: "June". */
export const monthName = (speaker: Speaker, month: number): string =>
  new Intl.DateTimeFormat(speaker.tag, { month: "long", timeZone: "UTC" }).format(
    new Date(Date.UTC(2000, month - 1, 15)),
  );
