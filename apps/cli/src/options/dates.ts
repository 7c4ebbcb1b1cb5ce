import { addDays, type CalendarDate, calendarDate, daysBetween } from "@keepwright/quantities";
import { quoted, userError } from "../userError.js";

const remedy = "Write a day as year-month-day, for example 2026-06-13.";

/** A day of the calendar. Throws UserError naming the option. */
export function dateOption(option: string): (text: string) => CalendarDate {
  return (text) => {
    try {
      return calendarDate(text.trim());
    } catch {
      throw userError(option, quoted(text), remedy);
    }
  };
}

/** Longest stretch away that is written out [d]: no plan is longer. */
const longestStretch = 60;

function stretch(option: string, part: string): CalendarDate[] {
  const ends = part.split(/\.\.|\//).map((end) => dateOption(option)(end));
  const [first, last = first] = ends;
  if (first === undefined || last === undefined || ends.length > 2)
    throw userError(option, quoted(part), remedy);
  const length = daysBetween(first, last);
  if (length < 0) throw userError(option, quoted(part), "The first day comes after the last; swap them.");
  if (length > longestStretch) throw userError(option, quoted(part), `Give at most ${longestStretch} days.`);
  return Array.from({ length: length + 1 }, (_, day) => addDays(first, day));
}

/**
 * Days of a plan on which nobody is at home, as day numbers. Days are parted by commas; a stretch is written
 * first/last, as in ISO 8601. Throws UserError for a day that is not planned for.
 */
export function awayDays(text: string, from: CalendarDate, days: number): number[] {
  const option = "--away";
  const numbers = text.split(",").flatMap((part) =>
    stretch(option, part).map((date) => {
      const day = daysBetween(from, date);
      if (day < 0 || day >= days) {
        const last = addDays(from, days - 1);
        throw userError(
          option,
          quoted(date),
          `The plan is for ${from} to ${last}. Give days between, or change --from or --days.`,
        );
      }
      return day;
    }),
  );
  return [...new Set(numbers)].sort((one, other) => one - other);
}
