import type { Plan } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords } from "../words/dates.js";
import type { HandoutContext } from "./context.js";

export interface EatingDay {
  readonly day: number;
  readonly date: string;
  readonly away: boolean;
  readonly lots: readonly { readonly lot: string; readonly portions: number }[];
  /** The line in two parts: the date in words, and each thing eaten with its portions. */
  readonly dateWords: string;
  readonly entries: readonly string[];
  readonly line: string;
}

export interface EatingView {
  readonly days: readonly EatingDay[];
  /** What is still there at the end, each in a sentence. */
  readonly left: readonly string[];
  /** When unripe lots should be ready, or that they will not be. */
  readonly ready: readonly string[];
}

type Names = ReadonlyMap<string, string>;

function eatingDay(context: HandoutContext, plan: Plan, names: Names, day: number): EatingDay {
  const date = addDays(plan.from, day);
  const away = plan.household.daysAway.includes(day);
  const lots = plan.lots.flatMap((lot) =>
    lot.eatOn
      .filter((meal) => meal.day === day && meal.portions > 0)
      .map(({ portions }) => ({ lot: lot.id, portions })),
  );
  const { speaker } = context;
  const list = lots.map(({ lot, portions }) =>
    speaker.say("eat.entry", { name: names.get(lot) ?? lot, count: portions }),
  );
  const values = { date: dayWords(speaker, date), list: speaker.list(list) };
  const line =
    list.length > 0 ? speaker.say("eat.day", values) : speaker.say(away ? "eat.away" : "eat.nothing", values);
  return { day, date, away, lots, dateWords: values.date, entries: list, line };
}

function readyLines(context: HandoutContext, plan: Plan, names: Names): string[] {
  return plan.lots.flatMap((lot) => {
    const name = context.speaker.capital(names.get(lot.id) ?? lot.id);
    if (lot.readyOnDay === null) return [context.speaker.say("eat.notReady", { name })];
    if (lot.readyOnDay < 1) return [];
    const date = dayWords(context.speaker, addDays(plan.from, lot.readyOnDay));
    return [context.speaker.say("eat.ready", { name, date })];
  });
}

/** What to eat on each planned day, what is left then, and what has to be waited for. */
export function eatingView(context: HandoutContext, plan: Plan, names: Names): EatingView {
  return {
    days: Array.from({ length: plan.days }, (_, day) => eatingDay(context, plan, names, day)),
    left: plan.lots
      .filter((lot) => lot.leftPortions > 0)
      .map((lot) =>
        context.speaker.say("eat.left", { name: names.get(lot.id) ?? lot.id, count: lot.leftPortions }),
      ),
    ready: readyLines(context, plan, names),
  };
}
