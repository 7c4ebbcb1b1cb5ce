import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";
import { dayWords } from "../words/dates.js";
import type { HandoutContext } from "./context.js";
import { readyDay } from "./keptDays.js";
import { isPast } from "./safeTime.js";

export interface EatingDay {
  readonly day: number;
  readonly date: string;
  readonly away: boolean;
  readonly lots: readonly { readonly lot: string; readonly portions: number }[];
  /** The line in two parts: the date in words, and each thing eaten with its portions. */
  readonly dateWords: string;
  readonly entries: readonly string[];
  /** The same with bare numbers of portions, where what they are is told once for all days. */
  readonly short: readonly string[];
  readonly line: string;
}

export interface EatingView {
  readonly days: readonly EatingDay[];
  /** What is still there at the end, each in a sentence. */
  readonly left: readonly string[];
  /** Whole pieces that last for several days: they are cut once begun, each in a sentence. */
  readonly cutOpen: readonly string[];
  /** When unripe lots should be ready, or that they will not be. */
  readonly ready: readonly string[];
}

type Names = ReadonlyMap<string, string>;

/** Chance of being past its best from which a meal is not told as a plain one [1]. */
export const moreLikelyThanNot = 0.5;

function eatingDay(context: HandoutContext, plan: Plan, names: Names, day: number): EatingDay {
  const date = addDays(plan.from, day);
  const away = plan.household.daysAway.includes(day);
  const meals = plan.lots
    .filter((lot) => !isPast(lot))
    .flatMap((lot) =>
      lot.eatOn
        .filter((meal) => meal.day === day && meal.portions > 0)
        .map(({ portions, chancePastBest = 0 }) => ({ lot: lot.id, portions, chancePastBest })),
    );
  const { speaker } = context;
  const list = meals.map(({ lot, portions, chancePastBest }) =>
    speaker.say(chancePastBest > moreLikelyThanNot ? "eat.entryDoubtful" : "eat.entry", {
      name: names.get(lot) ?? lot,
      count: portions,
    }),
  );
  const short = meals.map(({ lot, portions, chancePastBest }, index) =>
    chancePastBest > moreLikelyThanNot
      ? list[index]!
      : speaker.say("eat.entryShort", { name: names.get(lot) ?? lot, portions }),
  );
  const lots = meals.map(({ lot, portions }) => ({ lot, portions }));
  const values = { date: dayWords(speaker, date), list: speaker.list(list) };
  const line =
    list.length > 0 ? speaker.say("eat.day", values) : speaker.say(away ? "eat.away" : "eat.nothing", values);
  return { day, date, away, lots, dateWords: values.date, entries: list, short, line };
}

function readyLines(context: HandoutContext, plan: Plan, names: Names): string[] {
  return plan.lots.flatMap((lot) => {
    const name = context.speaker.capital(names.get(lot.id) ?? lot.id);
    if (isPast(lot)) return [];
    if (lot.readyOnDay === null) return [context.speaker.say("eat.notReady", { name })];
    const ready = readyDay(plan, lot);
    if (ready === undefined) return [];
    return [context.speaker.say("eat.ready", { name, date: dayWords(context.speaker, ready) })];
  });
}

function cutOpenLines({ speaker }: HandoutContext, plan: Plan, names: Names): string[] {
  return plan.lots.flatMap((lot) => {
    const name = speaker.capital(names.get(lot.id) ?? lot.id);
    const pieces = lot.cutOpen ?? [];
    const free = pieces.filter(({ safeUntil }) => safeUntil === undefined);
    const dates = free.map(({ date }) => dayWords(speaker, date));
    const [date] = dates;
    const once = date === undefined ? [] : [speaker.say("eat.cutOpen", { name, date })];
    const often = [speaker.say("eat.cutOpenOften", { name, dates: speaker.list(dates) })];
    const limited = pieces.flatMap((piece) => {
      if (piece.safeUntil === undefined) return [];
      const values = {
        name,
        date: dayWords(speaker, piece.date),
        last: dayWords(speaker, piece.safeUntil),
      };
      if (piece.safeUntil === piece.date)
        return [speaker.say("eat.cutOpenAtOnce", { ...values, count: piece.portionsAfter })];
      return piece.portionsAfter > 0
        ? [speaker.say("eat.cutOpenTooLong", { ...values, count: piece.portionsAfter })]
        : [speaker.say("eat.cutOpenUntil", values)];
    });
    return [...(dates.length > 1 ? often : once), ...limited];
  });
}

/** Portions left over, but for those of a piece that was begun and is no longer safe: what becomes of them is told with the piece. */
export const leftWhole = ({ leftPortions, cutOpen = [] }: PlannedLot): number =>
  leftPortions - cutOpen.reduce((sum, { portionsAfter }) => sum + portionsAfter, 0);

/** What is still there at the end, or has to be thrown away before. */
function leftLine({ speaker }: HandoutContext, plan: Plan, names: Names, lot: PlannedLot): string {
  const values = { name: names.get(lot.id) ?? lot.id, count: leftWhole(lot) };
  const { safeUntil } = lot;
  return safeUntil !== undefined && safeUntil < addDays(plan.from, plan.days)
    ? speaker.say("eat.throwAway", { ...values, date: dayWords(speaker, safeUntil) })
    : speaker.say("eat.left", values);
}

/** What to eat on each planned day, what is left then, and what has to be waited for. */
export function eatingView(context: HandoutContext, plan: Plan, names: Names): EatingView {
  return {
    days: Array.from({ length: plan.days }, (_, day) => eatingDay(context, plan, names, day)),
    left: plan.lots
      .filter((lot) => leftWhole(lot) > 0 && !isPast(lot))
      .map((lot) => leftLine(context, plan, names, lot)),
    cutOpen: cutOpenLines(context, plan, names),
    ready: readyLines(context, plan, names),
  };
}
