import { addDays, type CalendarDate } from "@keepwright/quantities";
import { shownValue } from "../problem/schemaFindings.js";
import { ageAt, daysSince } from "../reading/ages.js";
import { tokensOf } from "../reading/tokens.js";
import { Unreadable } from "./unreadable.js";

export const unclearDay = (phrase: string): Unreadable =>
  new Unreadable(
    "account day not clear",
    `it is not clear since which day, in ${shownValue(phrase)}`,
    "Write the day as: cut the melon 2 days ago, or: cut the melon on 2026-06-14.",
    { phrase: shownValue(phrase) },
  );

/** Before these a day is one to come. */
const toCome: ReadonlySet<string> = new Set(["for", "by", "until", "para", "hasta"]);

/** A day at the end of a line, taken off it; `unclear` where it is one, but nobody can say which. */
export function dayAtEnd(on: CalendarDate, line: string): { rest: string; date?: string; unclear?: true } {
  const tokens = tokensOf(line, 0);
  for (const [at, { from }] of tokens.entries()) {
    const found = ageAt(tokens, at, true);
    if (found?.next !== tokens.length || toCome.has(tokens[at - 1]?.folded ?? "")) continue;
    const { extraDays, since, ageAsked } = found.age;
    const days = since === undefined ? extraDays : daysSince(since, on);
    const rest = line.slice(0, from).trimEnd();
    const dated = since !== undefined && /^\d/.test(since);
    if (!ageAsked && dated) return { rest, date: since };
    return ageAsked || days === undefined ? { rest, unclear: true } : { rest, date: addDays(on, -days) };
  }
  return { rest: line };
}

/** The same, where it is told by a day since when something has been so: that may not be guessed. */
export function clearDayAtEnd(on: CalendarDate, line: string): { rest: string; date?: string } {
  const found = dayAtEnd(on, line);
  if (found.unclear) throw unclearDay(line);
  return found;
}
