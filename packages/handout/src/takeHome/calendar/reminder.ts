/** A reminder by the clock on the wall: on the day of the event, or on the day before it. */
export interface Reminder {
  readonly day: "same" | "before";
  /** 0 to 23, and 0 to 59. */
  readonly hour: number;
  readonly minute: number;
}

const minutesPerDay = 24 * 60;

/**
 * Time from the beginning of the event's day, which carries no time zone and so begins at midnight wherever the calendar is read. On the two days of a year on which clocks
 * change at night, a reader that counts elapsed hours rings an hour off for the same day; the evening before is not touched.
 */
function trigger({ day, hour, minute }: Reminder): string {
  const after = hour * 60 + minute - (day === "before" ? minutesPerDay : 0);
  const length = Math.abs(after);
  if (length === 0) return "PT0S";
  if (length === minutesPerDay) return "-P1D";
  const hours = Math.floor(length / 60);
  const minutes = length % 60;
  return `${after < 0 ? "-" : ""}PT${hours > 0 ? `${hours}H` : ""}${minutes > 0 ? `${minutes}M` : ""}`;
}

/** The lines of a reminder within an event. `summary` as escaped there. */
export const reminderLines = (reminder: Reminder, summary: string): string[] => [
  "BEGIN:VALARM",
  "ACTION:DISPLAY",
  `DESCRIPTION:${summary}`,
  `TRIGGER:${trigger(reminder)}`,
  "END:VALARM",
];
