import { addDays, normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { alike, type PlanFault, sum, unless } from "./fault.js";
import { chanceOn, leftOverDay } from "./life.js";
import { kindOf, lotOf, portionsOf, type Subject } from "./subject.js";

const namesOfDays = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
const millisecondsPerDay = 86_400_000;

/** Days from the first day to the one a lot is wanted for; a weekday is looked for among the seven days after the first. */
function dayWanted(from: string, day: string | number): number {
  if (typeof day === "number") return day;
  const first = Date.parse(`${from}T00:00:00Z`);
  if (!namesOfDays.includes(day)) return (Date.parse(`${day}T00:00:00Z`) - first) / millisecondsPerDay;
  return [1, 2, 3, 4, 5, 6, 7].find(
    (ahead) => namesOfDays[new Date(first + ahead * millisecondsPerDay).getUTCDay()] === day,
  )!;
}

type Told = NonNullable<PlannedLot["wish"]>;

/** Days on which a portion is as wanted: the first, and the last where there is one. */
function daysServed({ when, day }: Told): { readonly first: number; readonly last?: number } {
  if (when === "by") return { first: 0, last: day };
  if (when === "on") return { first: day, last: day };
  return { first: when === "from" ? day : day + 1 };
}

/**
 * Chance that a part is ready on a day, from the three days told: those before and after the middle lie in the ratio by which slow lots are slower
 * than the middle, counted from the day that all of them have in common.
 */
export function chanceReadyOn({ ready }: Told, day: number): number {
  if (ready === null) return 0;
  const { early, middle, late } = ready;
  if (late <= 0) return 1;
  const slower = (late - middle) / (middle - early);
  if (!(slower > 1)) return day >= middle ? 1 : 0;
  const own = (middle - early) / (1 - 1 / slower);
  const since = day - (middle - own);
  if (since <= 0) return 0;
  return normalDistribution((Math.log(since / own) / Math.log(slower)) * normalNinetiethPercentile);
}

interface Eaten {
  readonly day: number;
  readonly portions: number;
}

/** When the portions of a part are eaten; what is left over is kept for as long as it is wanted. */
function eatenOf({ plan }: Subject, { eatOn, leftPortions }: PlannedLot, wish: Told): Eaten[] {
  if (leftPortions === 0) return eatOn;
  const { first, last } = daysServed(wish);
  const end = leftOverDay(plan.days);
  const day = last === undefined ? Math.max(end, first) : last < plan.days ? end : last;
  return [...eatOn, { day, portions: leftPortions }];
}

interface Judged extends Eaten {
  readonly chance: number;
  readonly served: boolean;
  readonly late: number;
}

/** Every portion of a part with the chance that it is as wanted. */
function judged(subject: Subject, part: PlannedLot, wish: Told): Judged[] {
  const { first, last } = daysServed(wish);
  return eatenOf(subject, part, wish).map((eaten) => {
    const ready = chanceReadyOn(wish, last ?? eaten.day);
    const past = chanceOn(subject, part, Math.min(eaten.day, last ?? eaten.day));
    const kept = eaten.day >= first;
    return {
      ...eaten,
      chance: kept ? Math.max(0, ready - past) : 0,
      served: kept && ready >= 0.5 - 1e-6 && past < 0.5,
      late: last === undefined ? 0 : Math.min(weights.mostDaysLate, Math.max(0, eaten.day - last)),
    };
  });
}

/** Days by which a part is ready too late. */
function readyLate(wish: Told): number {
  const { last } = daysServed(wish);
  if (last === undefined) return 0;
  return Math.min(weights.mostDaysLate, Math.max(0, (wish.ready?.middle ?? Number.POSITIVE_INFINITY) - last));
}

function missed(subject: Subject, part: PlannedLot): number {
  const { wish } = part;
  if (!wish) return 0;
  const size = part.grams / portionsOf(part);
  return sum(
    judged(subject, part, wish).map(
      ({ portions, chance, late }) =>
        portions *
        size *
        (weights.wishMissed * (1 - chance) +
          weights.dayReadyLate * readyLate(wish) +
          weights.dayEatenLate * late),
    ),
  );
}

/** What wishes that are missed cost in all [g]. */
export const wishesMissed = (subject: Subject): number =>
  sum(subject.plan.lots.map((part) => missed(subject, part)));

function asTold(subject: Subject, part: PlannedLot, wish: Told): PlanFault[] {
  const { plan } = subject;
  const all = judged(subject, part, wish);
  const chance = sum(all.map((each) => each.portions * each.chance)) / portionsOf(part);
  const met = all.every(({ served }) => served);
  const ripens = kindOf(subject, part).ripening !== undefined && part.form === "whole";
  const ready = wish.ready === null ? null : Math.max(0, Math.ceil(wish.ready.middle - 1e-6));
  const date = addDays(plan.from, wish.day);
  const inOrder =
    wish.ready === null || (wish.ready.early <= wish.ready.middle && wish.ready.middle <= wish.ready.late);
  return [
    ...unless(wish.date === date, "wish", `${part.id} date`, wish.date, date),
    ...unless(inOrder, "wish", `${part.id} ready`, wish.ready?.early ?? "never", "in order", "d"),
    ...unless(
      part.readyOnDay === ready,
      "wish",
      `${part.id} ready`,
      part.readyOnDay ?? "never",
      ready ?? "never",
      "d",
    ),
    ...unless(alike(wish.chance, chance), "wish", `${part.id} chance`, wish.chance, chance),
    ...unless(wish.met === met, "wish", `${part.id} met`, String(wish.met), String(met)),
    ...unless(
      (wish.why === undefined) === met,
      "wish",
      `${part.id} why`,
      wish.why ?? "none",
      met ? "none" : "a reason",
    ),
    ...unless(wish.ripens === ripens, "wish", `${part.id} ripens`, String(wish.ripens), String(ripens)),
  ];
}

/** Every part of a lot that is wanted for a day says so, for the right day, with the chance that follows from what it tells; no other does. */
export const wishes = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const { wish } = part;
    const { wanted } = lotOf(subject, part);
    if (!wanted || !wish)
      return unless(!wanted === !wish, "wish", part.id, wish?.when ?? "no wish", wanted?.when ?? "no wish");
    const day = dayWanted(subject.plan.from, wanted.day);
    return [
      ...unless(wish.when === wanted.when, "wish", part.id, wish.when, wanted.when),
      ...unless(wish.day === day, "wish", `${part.id} day`, wish.day, day, "d"),
      ...asTold(subject, part, wish),
    ];
  });
