import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../../view/context.js";
import { dayWords } from "../../words/dates.js";
import { goodUntil } from "../goodUntil.js";
import type { DayEvent } from "./calendarEvents.js";

type Words = ReadonlyMap<string, string>;

/** Days one after another from which on they are told as a span. */
const leastSpan = 3;

/** The days on which the plan eats it, in a sentence; nothing where it does not. Three and more in a row are told from the first to the last. */
function mealsLine({ speaker }: HandoutContext, lot: PlannedLot): string[] {
  const days = lot.eatOn.filter(({ portions }) => portions > 0).map(({ date }) => date);
  const begins = days.flatMap((date, index) => (days[index - 1] === addDays(date, -1) ? [] : [index]));
  const dates = begins.flatMap((begin, run) => {
    const row = days.slice(begin, begins[run + 1]).map((date) => dayWords(speaker, date));
    if (row.length < leastSpan) return row;
    return [speaker.say("calendar.daySpan", { from: row[0]!, to: row.at(-1)! })];
  });
  return dates.length > 0 ? [speaker.say("calendar.meals", { dates: speaker.list(dates) })] : [];
}

const summaries = {
  "throw away": "calendar.throwAway",
  "at once": "calendar.atOnce",
  "for safety": "calendar.lastSafeDay",
  quality: "calendar.eatBy",
} as const;

function partEvents(context: HandoutContext, plan: Plan, lot: PlannedLot, names: Words, key: string) {
  const { speaker } = context;
  const name = names.get(lot.id) ?? lot.id;
  const { why, date, line } = goodUntil(context, plan, lot);
  const forSafety = why !== "quality";
  const ask = forSafety ? [speaker.say("caution.local")] : [];
  const meals = why === "throw away" ? [] : mealsLine(context, lot);
  const common = { key: [key, lot.commodity] };
  const until: DayEvent = {
    ...common,
    sort: "until",
    date,
    summary: speaker.say(summaries[why], { name }),
    description: [line, ...meals, ...ask].join("\n"),
  };
  if (!forSafety || why === "throw away") return [until];
  const left: DayEvent = {
    ...common,
    sort: "left",
    date: addDays(date, 1),
    summary: speaker.say("calendar.left", { name }),
    description: [line, ...ask].join("\n"),
  };
  return [until, left];
}

/** Told where something is still there then: left over, or eaten later in the planned days. */
const matters = (lot: PlannedLot, date: CalendarDate): boolean =>
  lot.leftPortions > 0 || lot.eatOn.some((meal) => meal.portions > 0 && meal.date > date);

/**
 * By when each part should be eaten. One event a part whatever ends it: where a plan finds that something may no longer be eaten, the event
 * that said when to eat it is the one that says to throw it away.
 */
export function untilEvents(context: HandoutContext, plan: Plan, names: Words, keys: Words): DayEvent[] {
  return plan.lots
    .flatMap((lot) =>
      partEvents(context, plan, lot, names, keys.get(lot.id) ?? lot.id).map((event) => ({ lot, event })),
    )
    .filter(({ lot, event }) => lot.safeUntil !== undefined || matters(lot, event.date))
    .map(({ event }) => event);
}
