import type { Plan, PlannedLot } from "@keepwright/planner";
import type { HandoutContext } from "../../view/context.js";
import { moveViews } from "../../view/moves.js";
import { placeNames } from "../../view/names.js";
import { isPast } from "../../view/safeTime.js";
import { toldStays } from "../../view/toldStays.js";
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
  const views = moveViews(context, plan, names, places);
  return plan.lots.flatMap((lot) => {
    const name = names.get(lot.id) ?? lot.id;
    const later = views
      .filter((move) => move.lot === lot.id)
      .flatMap(({ date, whenRipe }, index): Told[] => {
        const [here, to] = toldStays(lot).slice(index, index + 2);
        if (!here || !to) return [];
        const same = to.place === here.place;
        const words = same ? "calendar.rewrap" : whenRipe ? "calendar.moveRipe" : "calendar.move";
        const from = places.get(here.place) ?? here.place;
        return [
          {
            date,
            summary: speaker.say(words, { name, to: places.get(to.place) ?? to.place }),
            line: lineOf(context, { from, wrap: to.wrap, same, whenRipe }),
          },
        ];
      });
    const moves: Told[] = [...atOnce(context, plan, lot, name, places, lies), ...later];
    return moves.map(({ date, summary, line }, index): DayEvent => {
      const key = [keys.get(lot.id) ?? lot.id, lot.commodity, moves.length - index];
      return { sort: "move", key, date, summary, description: line };
    });
  });
}
