import type { Plan } from "@keepwright/planner";
import type { HandoutContext } from "../../view/context.js";
import { eatingView } from "../../view/eating.js";
import { begunPieces } from "../begunPieces.js";
import { tooLongLine } from "./begunEvents.js";
import type { DayEvent } from "./calendarEvents.js";

/** Most things named in the title of a day: the rest stand below it. */
const mostNamed = 3;

/** Warnings for a day on which a part is eaten of which an earlier piece was cut too long ago by then, by part. */
function tooLong(context: HandoutContext, plan: Plan, names: ReadonlyMap<string, string>, date: string) {
  return new Map(
    plan.lots.flatMap((lot) => {
      const pieces = begunPieces(lot).filter(({ last, tooLate }) => last < date && tooLate > 0);
      const lines = pieces.map((piece) => tooLongLine(context, names.get(lot.id) ?? lot.id, piece));
      return lines.length > 0 ? [[lot.id, lines] as const] : [];
    }),
  );
}

/** What to eat on each day on which something is, what ends soonest named first. */
export function eatEvents(
  context: HandoutContext,
  plan: Plan,
  names: ReadonlyMap<string, string>,
): DayEvent[] {
  const { speaker } = context;
  const early = new Map(plan.lots.map((lot) => [lot.id, lot.life.early]));
  const soonest = (one: { lot: string }, other: { lot: string }) =>
    (early.get(one.lot) ?? 0) - (early.get(other.lot) ?? 0);
  return eatingView(context, plan, names)
    .days.filter(({ lots }) => lots.length > 0)
    .map(({ date, lots, entries }) => {
      const warnings = tooLong(context, plan, names, date);
      const named = [...lots].sort(soonest).map(({ lot }) => names.get(lot) ?? lot);
      const warned = lots.flatMap(({ lot }) => warnings.get(lot) ?? []);
      const description = [...warned, ...entries].join("\n");
      const rest = named.length - mostNamed;
      const summary =
        rest > 0
          ? speaker.say("calendar.eatMore", { names: named.slice(0, mostNamed).join(", "), count: rest })
          : speaker.say("calendar.eat", { names: speaker.list(named) });
      return { sort: "eat", key: [date], date, summary, description };
    });
}
