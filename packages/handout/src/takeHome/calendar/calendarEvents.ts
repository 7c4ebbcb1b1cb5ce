import type { Plan } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import { lotNames } from "../../view/names.js";
import type { LyingLots } from "../lyingLots.js";
import { begunEvents } from "./begunEvents.js";
import { eventUid, type Succession } from "./calendarUid.js";
import { eatEvents } from "./eatEvents.js";
import { calendarMoves, moveEvents } from "./moveEvents.js";
import { untilEvents } from "./untilEvents.js";

/** What an event is about: eating on a day; until when a part keeps; what is left over and unsafe; a move. */
export type EventSort = "eat" | "until" | "left" | "move";

/** Something for a whole day, before it has its identity: `key` is the same in every plan that still has it. */
export interface DayEvent {
  readonly sort: EventSort;
  readonly key: readonly (string | number)[];
  readonly date: CalendarDate;
  readonly summary: string;
  readonly description: string;
}

/** An event of a calendar. It lasts a day and carries no clock, so no time zone can shift it. */
export interface CalendarEvent extends Omit<DayEvent, "key"> {
  readonly uid: string;
}

/** Names of parts that last when a plan is carried on: there “lot-1/2” becomes the lot “lot-1.2”. */
export function partKeys(plan: Plan): ReadonlyMap<string, string> {
  const ids = new Set(plan.lots.map(({ id }) => id));
  return new Map(
    plan.lots.map(({ id }) => {
      const later = id.replaceAll("/", ".");
      return [id, later !== id && ids.has(later) ? id : later];
    }),
  );
}

/** Every event of a plan, in order of date: what to eat on which day, what to move, by when to eat each part, and what to throw away. */
export function calendarEvents(
  context: HandoutContext,
  plan: Plan,
  succession: Succession,
  lies: LyingLots = new Map(),
): CalendarEvent[] {
  const names = lotNames(context, plan);
  const keys = partKeys(plan);
  const events = [
    ...untilEvents(context, plan, names, keys),
    ...begunEvents(context, plan, names, keys),
    ...eatEvents(context, plan, names),
    ...moveEvents(context, plan, names, keys, lies),
  ];
  return events
    .map(({ key, ...event }) => ({ uid: eventUid(succession, event.sort, ...key), ...event }))
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}

/**
 * Identities of the moves that a plan carried on takes as made: of what lies where it stays, the one before those still to come. Foreseen for its
 * first day, such a move has not fallen away.
 */
export function madeMoves(plan: Plan, succession: Succession, lies: LyingLots): ReadonlySet<string> {
  const keys = partKeys(plan);
  const made = plan.lots
    .filter((lot) => lies.get(lot.lot)?.place === lot.stays[0]?.place)
    .map((lot) =>
      eventUid(succession, "move", keys.get(lot.id) ?? lot.id, lot.commodity, calendarMoves(lot).length + 1),
    );
  return new Set(made);
}
