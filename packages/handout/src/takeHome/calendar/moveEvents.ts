import type { Plan } from "@keepwright/planner";
import type { HandoutContext } from "../../view/context.js";
import { moveViews } from "../../view/moves.js";
import { placeNames } from "../../view/names.js";
import type { DayEvent } from "./calendarEvents.js";

type Words = ReadonlyMap<string, string>;

/**
 * Every move after the first putting away. Counted from the last one: those that are still to come keep their identity when a plan is
 * carried on after the first ones were made.
 */
export function moveEvents(context: HandoutContext, plan: Plan, names: Words, keys: Words): DayEvent[] {
  const { speaker } = context;
  const places = placeNames(plan);
  const views = moveViews(context, plan, names, places);
  return plan.lots.flatMap((lot) => {
    const own = views.filter((move) => move.lot === lot.id);
    return own.map(({ date, whenRipe, line }, index): DayEvent => {
      const to = lot.stays[index + 1];
      const same = to?.place === lot.stays[index]?.place;
      const name = names.get(lot.id) ?? lot.id;
      const words = same ? "calendar.rewrap" : whenRipe ? "calendar.moveRipe" : "calendar.move";
      const summary = speaker.say(words, { name, to: places.get(to?.place ?? "") ?? "" });
      const fromLast = own.length - index;
      return {
        sort: "move",
        key: [keys.get(lot.id) ?? lot.id, lot.commodity, fromLast],
        date,
        summary,
        description: line,
      };
    });
  });
}
