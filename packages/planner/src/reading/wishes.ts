import { mostDaysAhead, type Wanted } from "../problem/wanted.js";
import { numberAt } from "./numbers.js";
import type { Token } from "./tokens.js";
import {
  bought,
  dayNames,
  laterPhrases,
  leads,
  links,
  nearDays,
  nextDay,
  type SaidWish,
  soonPhrases,
  tellingLeads,
  thisDay,
  timesOfDay,
  vagueDays,
} from "./wishWords.js";

interface Found<What> {
  readonly what: What;
  readonly next: number;
}
const found = <What>(what: What, next: number): Found<What> => ({ what, next });

/** Where a phrase ends that begins at a token; undefined when it does not. */
function after(tokens: readonly Token[], at: number, words: readonly string[]): number | undefined {
  return words.every((word, index) => tokens[at + index]?.folded === word) ? at + words.length : undefined;
}

function firstOf(
  tokens: readonly Token[],
  at: number,
  phrases: readonly (readonly string[])[],
): number | undefined {
  for (const words of phrases) {
    const next = after(tokens, at, words);
    if (next !== undefined) return next;
  }
  return undefined;
}

const unitDays: Readonly<Record<string, number>> = {
  day: 1,
  days: 1,
  dia: 1,
  dias: 1,
  week: 7,
  weeks: 7,
  semana: 7,
  semanas: 7,
};

/** "In 4 days", “dentro de una semana”: days from the first. */
function inDays(tokens: readonly Token[], at: number): Found<Wanted | "unclear"> | undefined {
  const spanish = after(tokens, at, ["dentro", "de"]);
  const word = tokens[at]?.folded ?? "";
  const start = spanish ?? (["in", "en", "within"].includes(word) ? at + 1 : undefined);
  const number = start === undefined ? undefined : numberAt(tokens, start);
  const unit = number && tokens[number.next]?.folded;
  if (!number || !unit || !Object.hasOwn(unitDays, unit)) return undefined;
  const day = number.value * unitDays[unit]!;
  const behind = number.next + 1;
  const next = tokens[behind]?.folded === "time" ? behind + 1 : behind;
  const clear = number.exactness === "exact" && Number.isInteger(day) && day <= mostDaysAhead;
  return found(
    clear ? { when: word === "within" ? ("by" as const) : ("on" as const), day } : "unclear",
    next,
  );
}

/** 2026-06-19 */
function dateAt(tokens: readonly Token[], at: number): Found<string> | undefined {
  const text = tokens
    .slice(at, at + 5)
    .map(({ text: one }) => one)
    .join("");
  const joined = tokens.slice(at + 1, at + 5).every(({ spaced }) => !spaced);
  return joined && /^\d{4}-\d{2}-\d{2}$/.test(text) ? found(text, at + 5) : undefined;
}

function weekdayAt(tokens: readonly Token[], at: number): Found<Wanted["day"] | "unclear"> | undefined {
  const word = tokens[at]?.folded ?? "";
  const open = nextDay.has(word) || (word === "el" && nextDay.has(tokens[at + 1]?.folded ?? ""));
  let start = at;
  while (thisDay.has(tokens[start]?.folded ?? "") || nextDay.has(tokens[start]?.folded ?? "")) start++;
  const day = dayNames.get(tokens[start]?.folded ?? "");
  if (day === undefined) return undefined;
  const stop = tokens[start + 1];
  const next =
    stop?.text === "." && !stop.spaced && tokens[start]!.text.length <= 5 && start + 2 < tokens.length
      ? start + 2
      : start + 1;
  return found(open ? "unclear" : day, next);
}

/** The day that begins at a token. */
function dayAt(tokens: readonly Token[], at: number): Found<Wanted["day"] | "unclear"> | undefined {
  const vague = firstOf(tokens, at, vagueDays);
  if (vague !== undefined) return found("unclear", vague);
  for (const [words, day] of nearDays) {
    const next = after(tokens, at, words);
    if (next !== undefined) return found(day, next);
  }
  const day = dateAt(tokens, at) ?? weekdayAt(tokens, at);
  const time = day && firstOf(tokens, day.next, timesOfDay);
  return day && found(day.what, time ?? day.next);
}

/** A link with its day: "by Friday", “para el domingo”. */
function linkedDay(
  tokens: readonly Token[],
  at: number,
  led: boolean,
): Found<Wanted | "unclear"> | undefined {
  for (const { words, when, needsLead } of links) {
    const start = after(tokens, at, words);
    const day = start === undefined ? undefined : dayAt(tokens, start);
    if (!day) continue;
    const clear = when !== "unclear" && day.what !== "unclear" && (led || !needsLead);
    return found(clear ? { when, day: day.what as Wanted["day"] } : "unclear", day.next);
  }
  return inDays(tokens, at);
}

/** Words that only lead up to a day, as far as they go. */
const mostLeads = 7;

function leadsAt(tokens: readonly Token[], at: number): { next: number; telling: boolean } {
  let next = at;
  let telling = false;
  while (next < at + mostLeads && leads.has(tokens[next]?.folded ?? "")) {
    if (tellingLeads.has(tokens[next]!.folded)) telling = true;
    next++;
  }
  return { next, telling };
}

/** What is said at a token of the day a lot is wanted for. What was bought on a day is no wish. */
export function wishAt(tokens: readonly Token[], at: number): { wish: SaidWish; next: number } | undefined {
  if (tokens[at]?.kind !== "word" || bought.has(tokens[at - 1]?.folded ?? "")) return undefined;
  const later = firstOf(tokens, at, laterPhrases);
  const { next: end, telling } = leadsAt(tokens, at);
  // The leads may swallow the link's own first word (“los quiero para el …”), so shorter ones are tried too.
  for (let start = end; start >= at; start--) {
    const day = linkedDay(tokens, start, telling && start > at);
    if (day) return { wish: day.what, next: day.next };
  }
  const near = telling ? dayAt(tokens, end) : undefined;
  if (near)
    return { wish: near.what === "unclear" ? "unclear" : { when: "on", day: near.what }, next: near.next };
  const soon = firstOf(tokens, end, soonPhrases);
  if (soon !== undefined && (telling || end === at)) return { wish: "unclear", next: soon };
  return later === undefined ? undefined : { wish: "later", next: later };
}
