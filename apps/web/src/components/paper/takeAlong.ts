import {
  calendarEvents,
  calendarText,
  type HandoutContext,
  type LabelSheet,
  labelRows,
  lyingLots,
  madeMoves,
  type Reminder,
  sheetView,
} from "@keepwright/handout";
import type { PaperSize } from "@keepwright/paper/browser";
import { calendarDate } from "@keepwright/quantities";
import type { PaperAsked } from "../../behaviour/paper/paperMessages.js";
import type { MadePlan } from "../../behaviour/usePlan.js";

const counted = ({ asked }: MadePlan) => new Map(asked.lots.map((lot) => [lot.id, lot]));

/** What the sheet for the door is set from. */
export const sheetAsked = (
  context: HandoutContext,
  made: MadePlan,
  how: { readonly paper: PaperSize; readonly large: boolean },
): PaperAsked => ({
  sort: "sheet",
  view: sheetView(context, made.plan, counted(made)),
  foot: context.speaker.say("sheet.page", { page: "{page}", pages: "{pages}" }),
  ...how,
});

/** What labels are set from. */
export const labelsAsked = (
  context: HandoutContext,
  made: MadePlan,
  how: { readonly grid: LabelSheet; readonly start: number; readonly outlines: boolean },
): PaperAsked => ({
  sort: "labels",
  rows: labelRows(context, made.plan, counted(made), lyingLots(made.asked.lots)),
  title: context.speaker.say("label.title"),
  language: context.speaker.tag,
  ...how,
});

/** The days of a plan as an iCalendar file, made at a moment in UTC. */
export function calendarOf(
  context: HandoutContext,
  { plan, asked }: MadePlan,
  reminder: Reminder | undefined,
  made: string,
): string {
  // Of a plan carried on, the days of the one before are told anew, not beside them.
  const succession = { began: calendarDate(asked.standing?.began ?? plan.from), name: "" };
  const lies = lyingLots(asked.lots);
  const events = calendarEvents(context, plan, succession, lies);
  return calendarText(context, succession, events, plan.from, {
    made,
    reminders: reminder ? [reminder] : [],
    madeMoves: madeMoves(plan, succession, lies),
  });
}
