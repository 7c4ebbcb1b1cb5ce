import type { Plan, PlannedLot } from "@keepwright/planner";
import { dayWords } from "../words/dates.js";
import type { HandoutContext } from "./context.js";
import { isPast } from "./safeTime.js";
import { toldStays } from "./toldStays.js";

/** Something to move on a day. `whenRipe`: the date is when it should be ripe; look, and move it then. */
export interface MoveView {
  readonly lot: string;
  readonly date: string;
  readonly whenRipe: boolean;
  readonly line: string;
}

type Names = ReadonlyMap<string, string>;

function movesOf(context: HandoutContext, lot: PlannedLot, lots: Names, places: Names): MoveView[] {
  const placeName = (id: string) => places.get(id) ?? id;
  const stays = toldStays(lot);
  return stays.slice(1).map((stay, index) => {
    const before = stays[index] ?? stay;
    const whenRipe = before.moveWhen === "ripe";
    const values = {
      date: dayWords(context.speaker, stay.from),
      name: context.speaker.capital(lots.get(lot.id) ?? lot.id),
      from: placeName(before.place),
      to: placeName(stay.place),
      wrap: context.speaker.say(`wrap.${stay.wrap}`),
    };
    const key = before.place === stay.place ? "move.rewrap" : whenRipe ? "move.ripe" : "move.day";
    return { lot: lot.id, date: stay.from, whenRipe, line: context.speaker.say(key, values) };
  });
}

/** Every move after the first putting away, in order of date. */
export function moveViews(context: HandoutContext, plan: Plan, lots: Names, places: Names): MoveView[] {
  return plan.lots
    .filter((lot) => !isPast(lot))
    .flatMap((lot) => movesOf(context, lot, lots, places))
    .sort((one, other) => (one.date < other.date ? -1 : one.date > other.date ? 1 : 0));
}
