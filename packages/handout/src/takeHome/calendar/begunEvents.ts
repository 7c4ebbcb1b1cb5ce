import type { Plan } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import { dayWords } from "../../words/dates.js";
import { type BegunPiece, begunPieces } from "../begunPieces.js";
import type { DayEvent } from "./calendarEvents.js";

type Words = ReadonlyMap<string, string>;

/** That what was cut of a thing may not be eaten after its last safe day. */
export const tooLongLine = ({ speaker }: HandoutContext, name: string, { cut, last }: BegunPiece): string =>
  speaker.say(cut === last ? "calendar.cutAtOnce" : "calendar.cutTooLong", {
    name: speaker.capital(name),
    cut: dayWords(speaker, cut),
    last: dayWords(speaker, last),
  });

/** The last safe day of each whole piece that is begun and not eaten up on the same day, and to throw away what is left of it on the day after. Counted from the last, as moves are. */
export function begunEvents(context: HandoutContext, plan: Plan, names: Words, keys: Words): DayEvent[] {
  const { speaker } = context;
  return plan.lots.flatMap((lot) => {
    const pieces = begunPieces(lot);
    const name = names.get(lot.id) ?? lot.id;
    return pieces.flatMap((piece, index): DayEvent[] => {
      const key = [keys.get(lot.id) ?? lot.id, lot.commodity, "begun", pieces.length - index];
      const description = `${tooLongLine(context, name, piece)}\n${speaker.say("caution.local")}`;
      // What keeps for hours only is thrown away the same day.
      const after = piece.last === piece.cut ? piece.last : addDays(piece.last, 1);
      return [
        {
          sort: "until",
          key,
          date: piece.last,
          summary: speaker.say("calendar.lastCutDay", { name }),
          description,
        },
        { sort: "left", key, date: after, summary: speaker.say("calendar.left", { name }), description },
      ];
    });
  });
}
