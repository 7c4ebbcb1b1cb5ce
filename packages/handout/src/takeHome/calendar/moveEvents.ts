import type { Plan, PlannedLot } from "@keepwright/planner";
import type { HandoutContext } from "../../view/context.js";
import { type LaterStay, laterStays } from "../../view/laterStays.js";
import { placeNames } from "../../view/names.js";
import { isPast } from "../../view/safeTime.js";
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
  readonly whenRipe: boolean;
}

/** What the heading of a move does not say yet. */
function lineOf({ speaker }: HandoutContext, { from, wrap, same, whenRipe }: Moved): string {
  const values = { from, wrap: speaker.say(`wrap.${wrap}`) };
  if (same) return speaker.say("calendar.rewrapFrom", values);
  return speaker.say(whenRipe ? "calendar.moveRipeFrom" : "calendar.moveFrom", values);
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
      line: lineOf(context, { from: placeName(before.place), wrap: to.wrap, same, whenRipe: false }),
    },
  ];
}

/** Later moves that have a day of their own: none of what may not be eaten, nor of what is moved only if it is ripe sooner than thought. */
export const calendarMoves = (lot: PlannedLot): LaterStay[] =>
  isPast(lot) ? [] : laterStays(lot).filter(({ when }) => when !== "if ripe before");

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
  const { speaker } = context;
  const places = placeNames(context, plan);
  return plan.lots.flatMap((lot) => {
    const name = names.get(lot.id) ?? lot.id;
    const later = calendarMoves(lot).map(({ before, stay, when }): Told => {
      const same = stay.place === before.place;
      const whenRipe = when === "ripe";
      const words = same ? "calendar.rewrap" : whenRipe ? "calendar.moveRipe" : "calendar.move";
      const from = places.get(before.place) ?? before.place;
      return {
        date: stay.from,
        summary: speaker.say(words, { name, to: places.get(stay.place) ?? stay.place }),
        line: lineOf(context, { from, wrap: stay.wrap, same, whenRipe }),
      };
    });
    const moves: Told[] = [...atOnce(context, plan, lot, name, places, lies), ...later];
    return moves.map(({ date, summary, line }, index): DayEvent => {
      const key = [keys.get(lot.id) ?? lot.id, lot.commodity, moves.length - index];
      return { sort: "move", key, date, summary, description: line };
    });
  });
}
