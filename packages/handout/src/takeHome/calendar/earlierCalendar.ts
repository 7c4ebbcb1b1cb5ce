import { unfoldedLines } from "./contentLine.js";

/** An event of a calendar that was given out before. */
export interface EarlierEvent {
  readonly uid: string;
  /** Unknown where the plan is at hand, and not its calendar. */
  readonly sequence?: number;
  readonly lastModified?: string;
  /** As in the file: year, month and day without dashes. */
  readonly date: string;
  /** As escaped in the file. */
  readonly summary: string;
  readonly cancelled: boolean;
  /** All that it says, but for when it was written and which revision it is. */
  readonly body: readonly string[];
}

/** A calendar that was given out before. */
export interface EarlierCalendar {
  /** Which succession of plans it belongs to. */
  readonly uid: string;
  readonly events: readonly EarlierEvent[];
}

/** What is wrong with a text that should be a calendar of ours. */
export class CalendarError extends Error {
  constructor(message: string) {
    super(message);
    this.name = "CalendarError";
  }
}

export const productId = "-//Keepwright//Keepwright calendar 1//EN";

/** Lines that change with every printing. */
const changing = /^(SEQUENCE|DTSTAMP|LAST-MODIFIED):/;

/** The value of a line by its name, parameters passed over. */
function valueNamed(lines: readonly string[], name: string): string | undefined {
  const line = lines.find((one) => one.startsWith(`${name}:`) || one.startsWith(`${name};`));
  return line?.slice(line.indexOf(":") + 1);
}

function eventFrom(lines: readonly string[]): EarlierEvent {
  const [uid, date, summary] = ["UID", "DTSTART", "SUMMARY"].map((name) => valueNamed(lines, name));
  const sequence = Number(valueNamed(lines, "SEQUENCE") ?? "");
  const whole = Number.isInteger(sequence) && sequence >= 0;
  if (!uid || !date || !/^\d{8}$/.test(date) || summary === undefined || !whole) {
    throw new CalendarError(`an event in it is spoilt: UID ${uid ?? "none"}, DTSTART ${date ?? "none"}`);
  }
  const lastModified = valueNamed(lines, "LAST-MODIFIED");
  return {
    uid,
    sequence,
    ...(lastModified !== undefined && { lastModified }),
    date,
    summary,
    cancelled: valueNamed(lines, "STATUS") === "CANCELLED",
    body: lines.filter((line) => !changing.test(line)),
  };
}

/**
 * Reads a calendar that `calendarText` wrote. Throws CalendarError for any other: what another program wrote or changed no longer has our
 * identities, and would be taken for things that fell away.
 */
export function earlierCalendar(text: string): EarlierCalendar {
  const lines = unfoldedLines(text.replace(/^\ufeff/, ""));
  if (lines[0] !== "BEGIN:VCALENDAR" || lines.at(-1) !== "END:VCALENDAR") {
    throw new CalendarError("not a whole calendar file");
  }
  const first = lines.indexOf("BEGIN:VEVENT");
  const head = first < 0 ? lines : lines.slice(0, first);
  const uid = valueNamed(head, "UID");
  if (valueNamed(head, "PRODID") !== productId || uid === undefined) {
    throw new CalendarError("another program wrote it");
  }
  const events: EarlierEvent[] = [];
  let begin = -1;
  lines.forEach((line, index) => {
    if (line === "BEGIN:VEVENT") begin = index;
    if (line === "END:VEVENT") events.push(eventFrom(lines.slice(begin + 1, index)));
  });
  return { uid, events };
}
