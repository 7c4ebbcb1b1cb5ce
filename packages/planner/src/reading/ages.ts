import { type CalendarDate, calendarDate, dayOfWeek, daysBetween } from "@keepwright/quantities";
import { type Weekday, weekdays } from "../problem/wanted.js";
import {
  aboutDays,
  ageLeads,
  daysIn,
  doneWords,
  partsOfDay,
  sinceWords,
  timesBack,
  vagueTimes,
} from "./ageWords.js";
import { numberAt } from "./numbers.js";
import type { Token } from "./tokens.js";
import { dayNames, thisDay } from "./wishWords.js";

/** How long ago something was bought, or cut, as far as it is told. */
export interface SaidAge {
  /** [d] */
  readonly extraDays?: number;
  /** A day of the week or of the calendar: how long ago it was is only known with the day it is now. */
  readonly since?: Weekday | CalendarDate;
  /** Whether it has to be asked: nobody could say, or the days are only about right, which for what is cut is not enough. */
  readonly ageAsked?: "always" | "where cut";
}

/** Is a time told, clear or not? */
export const tellsAge = ({ extraDays, since, ageAsked }: SaidAge): boolean =>
  extraDays !== undefined || since !== undefined || ageAsked !== undefined;

interface Found {
  readonly age: SaidAge;
  readonly next: number;
}

/** Longest time that is taken for an age [d]. */
const mostExtraDays = 60;

const after = (tokens: readonly Token[], at: number, words: readonly string[]): number | undefined =>
  words.every((word, index) => tokens[at + index]?.folded === word) ? at + words.length : undefined;

const wordAt = (tokens: readonly Token[], at: number): string => tokens[at]?.folded ?? "";

function firstOf(
  tokens: readonly Token[],
  at: number,
  all: readonly (readonly string[])[],
): number | undefined {
  for (const words of all) {
    const next = after(tokens, at, words);
    if (next !== undefined) return next;
  }
  return undefined;
}

const withPartOfDay = (tokens: readonly Token[], next: number): number =>
  firstOf(tokens, next, partsOfDay) ?? next;

/** "Yesterday evening", “anteayer”, "last week". */
function phraseAt(tokens: readonly Token[], at: number): Found | undefined {
  for (const [words, extraDays] of timesBack) {
    const next = after(tokens, at, words);
    if (next !== undefined) return { age: { extraDays }, next: withPartOfDay(tokens, next) };
  }
  for (const [words, days] of vagueTimes) {
    const next = after(tokens, at, words);
    if (next === undefined) continue;
    return { age: days === undefined ? { ageAsked: "always" } : about(days), next };
  }
  return undefined;
}

const about = (extraDays: number): SaidAge => ({ extraDays, ageAsked: "where cut" });

/** A number of days, weeks, nights or hours, and how it was told. */
function spanAt(tokens: readonly Token[], at: number): (Found & { readonly unit: string }) | undefined {
  const rough = aboutDays.has(wordAt(tokens, at));
  const number = numberAt(tokens, rough ? at + 1 : at);
  if (!number) return undefined;
  const dash = (index: number) => (tokens[index]?.text === "-" ? index + 1 : index);
  const joined = ["of", "de"].includes(wordAt(tokens, number.next)) ? number.next + 1 : number.next;
  const unit = dash(joined);
  const word = wordAt(tokens, unit);
  if (!Object.hasOwn(daysIn, word)) return undefined;
  const days = Math.ceil(number.value * daysIn[word]! - 1e-9);
  if (days > mostExtraDays) return { age: { ageAsked: "always" }, next: dash(unit + 1), unit: word };
  const exact = !rough && number.exactness === "exact";
  return { age: exact ? { extraDays: days } : about(days), next: dash(unit + 1), unit: word };
}

/** "3 days ago", "a week old", “hace 3 días”, “de 3 días”. */
function countedAt(tokens: readonly Token[], at: number): Found | undefined {
  const first = wordAt(tokens, at);
  const hace = first === "hace" || first === "hacen" || (first === "de" && wordAt(tokens, at + 1) !== "");
  const span = spanAt(tokens, hace ? at + 1 : at);
  if (!span) return undefined;
  if (hace) return /^(?:dia|semana|noche|mes|hora)/.test(span.unit) ? span : undefined;
  return ["old", "ago"].includes(wordAt(tokens, span.next)) ? { ...span, next: span.next + 1 } : undefined;
}

/** 2026-06-12 */
function dateAt(tokens: readonly Token[], at: number): Found | undefined {
  const five = tokens.slice(at, at + 5);
  const text = five.map((token) => token.text).join("");
  const joined = five.slice(1).every(({ spaced }) => !spaced);
  return joined && /^\d{4}-\d{2}-\d{2}$/.test(text)
    ? { age: { since: text }, next: at + five.length }
    : undefined;
}

/** A weekday; which one is meant is not clear behind "last" or before “pasado”. */
function weekdayAt(tokens: readonly Token[], at: number): Found | undefined {
  const last = wordAt(tokens, at) === "last";
  const start = last || thisDay.has(wordAt(tokens, at)) ? at + 1 : at;
  const day = dayNames.get(wordAt(tokens, start));
  if (day === undefined) return undefined;
  const past = wordAt(tokens, start + 1) === "pasado";
  const next = withPartOfDay(tokens, past ? start + 2 : start + 1);
  return { age: last || past ? { ageAsked: "always" } : { since: day }, next };
}

/**
 * How long ago something was bought or cut, where it is told at a token. A bare weekday or date is one only behind "since" and the like or what was done ("cut on Monday");
 * `past`: everywhere, since nothing to come is spoken of.
 */
export function ageAt(tokens: readonly Token[], at: number, past = false): Found | undefined {
  if (tokens[at]?.kind === "mark") return undefined;
  const since = sinceWords.has(wordAt(tokens, at));
  const start = since ? at + 1 : at;
  const lead = ageLeads.has(wordAt(tokens, start)) ? start + 1 : start;
  const told =
    phraseAt(tokens, start) ??
    countedAt(tokens, start) ??
    (lead > start ? (phraseAt(tokens, lead) ?? countedAt(tokens, lead)) : undefined);
  if (told) return told;
  const done = doneWords.has(wordAt(tokens, at - 1)) || wordAt(tokens, start) === "bought";
  const named = weekdayAt(tokens, start) ?? weekdayAt(tokens, lead) ?? dateAt(tokens, lead);
  const clear = past || since || done || wordAt(tokens, start) === "del" || named?.age.ageAsked;
  return named && clear ? named : undefined;
}

/** Days from a day that was told to now; undefined where it is not clear which day is meant, as of a weekday on that same weekday, or the day is to come. */
export function daysSince(since: Weekday | CalendarDate, on: CalendarDate): number | undefined {
  const weekday = weekdays.indexOf(since as Weekday);
  if (weekday >= 0) return (dayOfWeek(on) - weekday + 7) % 7 || undefined;
  try {
    const days = daysBetween(calendarDate(since), on);
    return days >= 0 && days <= mostExtraDays ? days : undefined;
  } catch {
    return undefined;
  }
}

/** Days since it was bought or cut [d]; of what is cut the most that are told, since one of them may speak of the cutting. */
export function extraDaysOf(said: readonly SaidAge[], cut: boolean): number {
  const told = said.flatMap(({ extraDays }) => extraDays ?? []);
  return told.length === 0 ? 0 : cut ? Math.max(...told) : told.at(-1)!;
}

/** What is to be asked of an age: nothing; since which day; or all of it, the day left out. */
export function askedAge(said: readonly SaidAge[], cut: boolean): Pick<SaidAge, "since"> | undefined {
  if (said.some(({ ageAsked }) => ageAsked === "always" || (cut && ageAsked !== undefined))) return {};
  const since = said.findLast((each) => each.since !== undefined)?.since;
  return since === undefined ? undefined : { since };
}
