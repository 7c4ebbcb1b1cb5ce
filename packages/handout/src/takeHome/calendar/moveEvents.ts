import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import { type LaterStay, laterStays } from "../../view/laterStays.js";
import { placeNames } from "../../view/names.js";
import { isPast } from "../../view/safeTime.js";
import { dayWords } from "../../words/dates.js";
import type { LyingLots } from "../lyingLots.js";
import type { DayEvent } from "./calendarEvents.js";

type Words = ReadonlyMap<string, string>;
type Stay = PlannedLot["stays"][number];

/** Something to move, as it is told and in full. */
interface Told {
  readonly date: string;
  readonly summary: string;
  readonly line: string;
}

interface Moved {
  readonly from: string;
  readonly wrap: Stay["wrap"];
  readonly same: boolean;
  readonly when: LaterStay["when"];
  /** The day it is to be there at the latest. */
  readonly day: CalendarDate;
}

/** What the heading of a move does not say yet. */
function lineOf({ speaker }: HandoutContext, { from, wrap, same, when, day }: Moved): string {
  const values = { from, wrap: speaker.say(`wrap.${wrap}`) };
  if (when === "if ripe before")
    return speaker.say("calendar.moveSoonerFrom", { ...values, date: dayWords(speaker, day) });
  if (same) return speaker.say("calendar.rewrapFrom", values);
  return speaker.say(when === "ripe" ? "calendar.moveRipeFrom" : "calendar.moveFrom", values);
}

/** What a plan that was carried on moves at once: there a lot lies somewhere already. */
function atOnce(
  context: HandoutContext,
  plan: Plan,
  lot: PlannedLot,
  name: string,
  places: Words,
  lies: LyingLots,
) {
  const { speaker } = context;
  const before = lies.get(lot.lot);
  const [to] = lot.stays;
  if (!before || !to || isPast(lot)) return [];
  if (before.place === to.place && before.wrap === to.wrap) return [];
  const placeName = (id: string) => places.get(id) ?? id;
  const same = before.place === to.place;
  return [
    {
      date: plan.from,
      summary: speaker.say(same ? "calendar.rewrap" : "calendar.move", { name, to: placeName(to.place) }),
      line: lineOf(context, {
        from: placeName(before.place),
        wrap: to.wrap,
        same,
        when: "day",
        day: plan.from,
      }),
    },
  ];
}

/** Later moves that are told of: none of what may not be eaten. */
export const calendarMoves = (lot: PlannedLot): LaterStay[] => (isPast(lot) ? [] : laterStays(lot));

/** The day a move stands on: its own; of what is moved only if it is ripe before, the day before that one, never before the plan. */
const toldOn = (plan: Plan, { stay, when }: LaterStay): CalendarDate => {
  const before = addDays(stay.from, -1);
  return when === "if ripe before" && before >= plan.from ? before : stay.from;
};

function summaryOf(
  { speaker }: HandoutContext,
  { before, stay, when }: LaterStay,
  values: { readonly name: string; readonly to: string },
): string {
  if (when === "if ripe before") return speaker.say("calendar.moveSooner", values);
  if (stay.place === before.place) return speaker.say("calendar.rewrap", values);
  return speaker.say(when === "ripe" ? "calendar.moveRipe" : "calendar.move", values);
}

/**
 * Every move after the first putting away, and what a plan that was carried on moves at once. Counted from the last one: those that are still to come keep their
 * identity when a plan is carried on after the first ones were made.
 */
export function moveEvents(
  context: HandoutContext,
  plan: Plan,
  names: Words,
  keys: Words,
  lies: LyingLots,
): DayEvent[] {
  const places = placeNames(context, plan);
  return plan.lots.flatMap((lot) => {
    const name = names.get(lot.id) ?? lot.id;
    const later = calendarMoves(lot).map((move): Told => {
      const { before, stay, when } = move;
      const from = places.get(before.place) ?? before.place;
      const same = stay.place === before.place;
      return {
        date: toldOn(plan, move),
        summary: summaryOf(context, move, { name, to: places.get(stay.place) ?? stay.place }),
        line: lineOf(context, { from, wrap: stay.wrap, same, when, day: stay.from }),
      };
    });
    const moves: Told[] = [...atOnce(context, plan, lot, name, places, lies), ...later];
    return moves.map(({ date, summary, line }, index): DayEvent => {
      const key = [keys.get(lot.id) ?? lot.id, lot.commodity, moves.length - index];
      return { sort: "move", key, date, summary, description: line };
    });
  });
}
