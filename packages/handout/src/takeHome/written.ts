import type { CalendarDate } from "@keepwright/quantities";
import type { CalendarEvent } from "./calendar/calendarEvents.js";
import { fallenAway } from "./calendar/calendarText.js";
import { calendarUid, type Succession } from "./calendar/calendarUid.js";
import type { EarlierCalendar } from "./calendar/earlierCalendar.js";
import type { PlacedLabel } from "./labels/labelLayout.js";
import type { LabelRow } from "./labels/labelRows.js";
import type { LabelSheet } from "./labels/labelSheet.js";

/** A calendar as it is written out in JSON. */
export const writtenCalendar = (
  succession: Succession,
  events: readonly CalendarEvent[],
  from: CalendarDate,
  earlier: EarlierCalendar | undefined,
  madeMoves: ReadonlySet<string>,
) => ({
  version: 1 as const,
  uid: calendarUid(succession),
  name: succession.name,
  began: succession.began,
  events,
  cancelled: fallenAway(earlier, events, from, madeMoves).map(({ uid }) => uid),
});

/** Labels as they are written out in JSON: what each says, and every line at its place. What is thrown away has no day to be eaten by. */
export const writtenLabels = (
  rows: readonly LabelRow[],
  placed: readonly PlacedLabel[],
  sheet: LabelSheet,
) => ({
  version: 1 as const,
  units: { length: "mm" as const },
  sheet,
  labels: rows.map((row, index) => ({
    ...row,
    date: row.why === "throw away" ? null : row.date,
    ...placed[index],
  })),
});
