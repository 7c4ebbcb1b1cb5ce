import type { Lot } from "@keepwright/planner";
import { daysFrom } from "./daysAway.js";
import type { PlannerState } from "./plannerState.js";
import { lotsToPlan, type ReadLine } from "./readLots.js";

/** Days that went by since a list came home, and what became of them. */
export interface SinceThen {
  /** The day it is now. */
  readonly on: string;
  /** What came home on a later day than the first, with the days since then as days it has lain. */
  readonly cameHome: readonly Lot[];
  /** Meals of the first plan that were not eaten, by the lot. */
  readonly uneaten: readonly DayOfLot[];
  /** Moves of the first plan that were not made, by the part. */
  readonly unmoved: readonly DayOfLot[];
}
export interface DayOfLot {
  readonly lot: string;
  readonly date: string;
}

/** The first lots with the day they came home, and what went by since; nothing went by where the list is of today, or its plan is over. */
export interface FirstDay {
  readonly from: string;
  readonly lots: readonly Lot[];
  readonly since: SinceThen | undefined;
}

type Dated = Pick<PlannerState, "from" | "before" | "missed" | "days">;

/** The day a plan's list came home: the one that is kept, or today. A clock that was set back does not put it into the future. */
export const firstDay = ({ from }: Pick<PlannerState, "from">, today: string): string =>
  from === "today" || from > today ? today : from;

/** Kinds of keys of what was not done: a meal, a move. */
export const missedKey = (what: "eat" | "move", date: string, line: string): string =>
  `${what}|${date}|${line}`;

/** What is told of a line by its words: its kind and whether it is cut. */
const alike = (one: ReadLine, other: ReadLine): boolean =>
  one.lot !== undefined && one.lot.commodity === other.lot?.commodity && one.lot.form === other.lot.form;

/**
 * The day each line's lot came home. A line that was there on a day came home by then; one that stands in the place of a line of the same kind is that one
 * written anew, and no fresher for it.
 */
export function arrivals(
  state: Dated,
  lines: readonly ReadLine[],
  today: string,
  read: (text: string) => readonly ReadLine[],
): ReadonlyMap<string, string> {
  const first = firstDay(state, today);
  const stages = state.before.filter(({ day }) => day > first && day <= today);
  const came = new Map<string, string>();
  const now = new Set(lines.map(({ key }) => key));
  stages.forEach(({ text }, stage) => {
    const day = stage === 0 ? first : stages[stage - 1]!.day;
    const then = read(text);
    const gone = then.filter(({ key }) => !now.has(key));
    for (const line of lines) {
      if (came.has(line.id)) continue;
      const same = then.some(({ key }) => key === line.key);
      const anew = gone.findIndex((each) => alike(each, line));
      if (!same && anew < 0) continue;
      if (!same) gone.splice(anew, 1);
      came.set(line.id, day);
    }
  });
  const last = stages.at(-1)?.day ?? first;
  return new Map(lines.map(({ id }) => [id, came.get(id) ?? last] as const));
}

const missedOf = (
  missed: PlannerState["missed"],
  what: "eat" | "move",
  lines: readonly ReadLine[],
): DayOfLot[] =>
  lines.flatMap(({ key, lot }) =>
    missed.flatMap((each) => {
      const [kind, date = "", ...rest] = each.split("|");
      const of = rest.join("|");
      // Parts of a lot are moved one by one and eaten as one.
      const part = of.startsWith(key) ? of.slice(key.length) : undefined;
      const isOf = part === "" || (what === "move" && part !== undefined && /^\/\d+$/.test(part));
      return lot && kind === what && isOf ? [{ lot: lot.id + part, date }] : [];
    }),
  );

/** What is planned from its first day, and what went by since. */
export function sinceThen(
  state: Dated,
  lines: readonly ReadLine[],
  today: string,
  read: (text: string) => readonly ReadLine[],
): FirstDay {
  const lots = lotsToPlan(lines);
  const came = arrivals(state, lines, today, read);
  const days = lots.map(({ id }) => came.get(id) ?? today).sort();
  const from = days[0] ?? today;
  const elapsed = daysFrom(from, today);
  if (elapsed === 0 || elapsed >= state.days) return { from, lots, since: undefined };
  const later = lots.filter(({ id }) => came.get(id) !== from);
  return {
    from,
    lots: lots.filter((lot) => !later.includes(lot)),
    since: {
      on: today,
      cameHome: later.map((lot) => ({
        ...lot,
        extraDays: Math.min(60, lot.extraDays + daysFrom(came.get(lot.id)!, today)),
      })),
      uneaten: missedOf(state.missed, "eat", lines),
      unmoved: missedOf(state.missed, "move", lines),
    },
  };
}
