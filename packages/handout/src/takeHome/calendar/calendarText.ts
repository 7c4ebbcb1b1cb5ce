import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import type { CalendarEvent } from "./calendarEvents.js";
import { calendarUid, type Succession } from "./calendarUid.js";
import { escapedText, folded } from "./contentLine.js";
import { type EarlierCalendar, type EarlierEvent, productId } from "./earlierCalendar.js";
import { type Reminder, reminderLines } from "./reminder.js";

/** When a calendar is made, and what is to stand in it besides the events. */
export interface CalendarMaking {
  /** Moment of the making, UTC, as in ISO 8601: 2026-06-13T08:00:00Z. An argument, so that the same call makes the same file. */
  readonly made: string;
  readonly reminders?: readonly Reminder[];
  /** The calendar given out before, by which what fell away is cancelled. */
  readonly earlier?: EarlierCalendar | undefined;
  /** Moves made already (see `madeMoves`): on the first day they are not cancelled. */
  readonly madeMoves?: ReadonlySet<string>;
}

/** First moment a revision is counted from: any that lies before all plans. Declared, no source. */
const countedFrom = Date.UTC(2020, 0, 1);

/**
 * Which revision it is (SEQUENCE): whole seconds from 2020 to the making, so that a later calendar is a later revision without anybody keeping count. Fits 32 bits until 2088.
 */
export const revisionAt = (made: string): number =>
  Math.max(0, Math.floor((Date.parse(made) - countedFrom) / 1000));

const dateValue = (date: CalendarDate): string => date.replaceAll("-", "");
const momentValue = (made: string): string =>
  `${new Date(Date.parse(made)).toISOString().slice(0, 19).replace(/[-:]/g, "")}Z`;

function bodyOf(event: CalendarEvent, reminders: readonly Reminder[]): string[] {
  const summary = escapedText(event.summary);
  return [
    `UID:${event.uid}`,
    `DTSTART;VALUE=DATE:${dateValue(event.date)}`,
    `DTEND;VALUE=DATE:${dateValue(addDays(event.date, 1))}`,
    `SUMMARY:${summary}`,
    `DESCRIPTION:${escapedText(event.description)}`,
    "STATUS:CONFIRMED",
    "TRANSP:TRANSPARENT",
    ...reminders.flatMap((reminder) => reminderLines(reminder, summary)),
  ];
}

/** A plan's events as if its calendar had been given out: what is cancelled when another follows. */
export const earlierFromEvents = (
  succession: Succession,
  events: readonly CalendarEvent[],
): EarlierCalendar => ({
  uid: calendarUid(succession),
  events: events.map((event) => ({
    uid: event.uid,
    date: dateValue(event.date),
    summary: escapedText(event.summary),
    cancelled: false,
    body: bodyOf(event, []),
  })),
});

function cancelledBody({ speaker }: HandoutContext, event: EarlierEvent): string[] {
  if (event.cancelled) return [...event.body];
  // The earlier summary is escaped already; the words around it are ours and hold nothing to escape but what is escaped here.
  const mark = "\u0000";
  const told = speaker.say("calendar.cancelled", { summary: mark });
  const [before = "", after = ""] = told.split(mark);
  const date = `${event.date.slice(0, 4)}-${event.date.slice(4, 6)}-${event.date.slice(6)}`;
  return [
    `UID:${event.uid}`,
    `DTSTART;VALUE=DATE:${event.date}`,
    `DTEND;VALUE=DATE:${dateValue(addDays(date, 1))}`,
    `SUMMARY:${escapedText(before)}${event.summary}${escapedText(after)}`,
    "STATUS:CANCELLED",
    "TRANSP:TRANSPARENT",
  ];
}

const sameLines = (one: readonly string[], other: readonly string[]): boolean =>
  one.join("\n") === other.join("\n");

/** A whole event: its body, and the revision it had before where nothing in it has changed. */
function eventLines(body: readonly string[], made: string, before: EarlierEvent | undefined): string[] {
  const unchanged = before !== undefined && sameLines(before.body, body);
  const next = Math.max(revisionAt(made), (before?.sequence ?? -1) + 1);
  const sequence = unchanged ? (before.sequence ?? next) : next;
  const modified = unchanged ? (before.lastModified ?? momentValue(made)) : momentValue(made);
  return [
    "BEGIN:VEVENT",
    `SEQUENCE:${sequence}`,
    `DTSTAMP:${momentValue(made)}`,
    `LAST-MODIFIED:${modified}`,
    ...body,
    "END:VEVENT",
  ];
}

/** Events of an earlier calendar that are no longer there, from the first day that may still be changed. */
export function fallenAway(
  earlier: EarlierCalendar | undefined,
  events: readonly CalendarEvent[],
  from: CalendarDate,
  made: ReadonlySet<string> = new Set(),
): EarlierEvent[] {
  const now = new Set(events.map(({ uid }) => uid));
  const first = dateValue(from);
  const open = ({ uid, date }: EarlierEvent) => date > first || (date === first && !made.has(uid));
  return (earlier?.events ?? []).filter((event) => !now.has(event.uid) && open(event));
}

/**
 * A calendar as an iCalendar file (RFC 5545, with the calendar's own UID and NAME of RFC 7986). Days are DATE values without a time zone. Of an earlier calendar, what lies on
 * or after `from` and is no longer among the events stands as cancelled; what lies before has happened and is left alone.
 *
 * @param from first day that may still be changed
 * @throws RangeError where the earlier calendar belongs to another succession of plans
 */
export function calendarText(
  context: HandoutContext,
  succession: Succession,
  events: readonly CalendarEvent[],
  from: CalendarDate,
  { made, reminders = [], earlier, madeMoves }: CalendarMaking,
): string {
  const uid = calendarUid(succession);
  if (earlier && earlier.uid !== uid) throw new RangeError("The earlier calendar is of other plans.");
  const before = new Map(earlier?.events.map((event) => [event.uid, event]));
  const gone = fallenAway(earlier, events, from, madeMoves);
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    `PRODID:${productId}`,
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `UID:${uid}`,
    `NAME:${escapedText(succession.name || context.speaker.say("calendar.name"))}`,
    ...events.flatMap((event) => eventLines(bodyOf(event, reminders), made, before.get(event.uid))),
    ...gone.flatMap((event) => eventLines(cancelledBody(context, event), made, event)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}
