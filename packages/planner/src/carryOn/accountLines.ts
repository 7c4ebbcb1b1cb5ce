import type { CalendarDate } from "@keepwright/quantities";
import { ageAt } from "../reading/ages.js";
import { tokensOf } from "../reading/tokens.js";
import { dayAtEnd } from "./dayTold.js";
import { beginnings, nextThing } from "./happenedWords.js";

const plain = (line: string): string =>
  line
    .trim()
    .replace(/^[-–•*]\s*/u, "")
    .replace(/[.!]+$/u, "")
    .toLowerCase();

const saysCut = (line: string): boolean =>
  beginnings.find(([, pattern]) => pattern.test(line))?.[0] === "cut";

/** A day at the beginning of a sentence, taken off it: “yesterday we cut the melon”. It holds for all that the sentence says. */
function dayAtStart(sentence: string): { said: string; day?: string } {
  const tokens = tokensOf(sentence, 0);
  const found = ageAt(tokens, 0, true);
  const first = found && tokens[found.next];
  if (!first) return { said: sentence };
  const said = sentence.slice(first.from).replace(/^\s*,?\s*/u, "");
  const day = sentence.slice(0, first.from).replace(/[\s,]+$/u, "");
  return beginnings.some(([, pattern]) => pattern.test(said)) ? { said, day } : { said: sentence };
}

/** The day told at the end of what is said to be cut holds for all that is said to be cut right before it in the same sentence: “cut melon and sliced tomatoes 3 days ago”. */
function withDayOfNext(on: CalendarDate, things: readonly string[]): string[] {
  const dated: string[] = [];
  let day: string | undefined;
  for (const line of things.toReversed()) {
    const { rest, date, unclear } = dayAtEnd(on, line);
    const own = date !== undefined || unclear ? line.slice(rest.length) : undefined;
    day = saysCut(line) ? (own ?? day) : undefined;
    dated.unshift(own === undefined && day !== undefined ? `${line}${day}` : line);
  }
  return dated;
}

/** What an account says, a thing a line; a day that is told once of several things stands with each of them. */
export function accountLines(text: string, on: CalendarDate): string[] {
  return text.split(/[;\n]/u).flatMap((written) => {
    const { said, day } = dayAtStart(plain(written));
    const things = said
      .split(nextThing)
      .map(plain)
      .filter((line) => line !== "");
    if (day === undefined) return withDayOfNext(on, things);
    return things.map((line) => (dayAtEnd(on, line).rest === line ? `${line} ${day}` : line));
  });
}
