import type { Plan, PlannedLot } from "@keepwright/planner";
import { dayWords } from "../words/dates.js";
import type { HandoutContext } from "./context.js";
import { type LaterStay, laterStays } from "./laterStays.js";
import { isPast } from "./safeTime.js";

/** Something to move on a day; `when` (see `laterStays`) tells whether the date is certain, about when it is ripe, or one by which it is eaten up. */
export interface MoveView {
  readonly lot: string;
  readonly date: string;
  readonly when: LaterStay["when"];
  readonly line: string;
}

const moveKeys = { day: "move.day", ripe: "move.ripe", "if ripe before": "move.sooner" } as const;

type Names = ReadonlyMap<string, string>;

function movesOf(context: HandoutContext, lot: PlannedLot, lots: Names, places: Names): MoveView[] {
  const placeName = (id: string) => places.get(id) ?? id;
  return laterStays(lot).map(({ before, stay, when }) => {
    const values = {
      date: dayWords(context.speaker, stay.from),
      name: context.speaker.capital(lots.get(lot.id) ?? lot.id),
      from: placeName(before.place),
      to: placeName(stay.place),
      wrap: context.speaker.say(`wrap.${stay.wrap}`),
    };
    const key = before.place === stay.place ? "move.rewrap" : moveKeys[when];
    return { lot: lot.id, date: stay.from, when, line: context.speaker.say(key, values) };
  });
}

/** Every move after the first putting away, in order of date. */
export function moveViews(context: HandoutContext, plan: Plan, lots: Names, places: Names): MoveView[] {
  return plan.lots
    .filter((lot) => !isPast(lot))
    .flatMap((lot) => movesOf(context, lot, lots, places))
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}
