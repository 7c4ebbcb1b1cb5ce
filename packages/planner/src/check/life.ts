import { endings } from "@keepwright/physics";
import { addDays, normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { eatingHabits } from "../rules/weights.js";
import { alike, type PlanFault, unless } from "./fault.js";
import { pastSafe } from "./safety.js";
import type { Subject } from "./subject.js";

/** The life by quality alone: as told, or as it would be where the safe time cuts the told one short. */
export const qualityLife = ({ life, lifeBeforeSafety }: PlannedLot): PlannedLot["life"] =>
  lifeBeforeSafety ?? life;

/** Standard deviation of ln(life), from the early and late days a plan tells (10 % and 90 % of a log-normal life). */
export const spreadOf = (part: PlannedLot): number => spread(qualityLife(part));

const spread = (life: PlannedLot["life"]): number =>
  life.early > 0 ? Math.log(life.late / life.early) / (2 * normalNinetiethPercentile) : 0;

/** Chance of being past its best by a day, for a log-normal life with this middle and spread. */
export function chanceBy(day: number, middle: number, spread: number): number {
  if (middle <= 0) return 1;
  if (day <= 0) return 0;
  if (spread <= 0) return day >= middle ? 1 : 0;
  return normalDistribution(Math.log(day / middle) / spread);
}

/** The day on which what is left over is taken to be eaten: some days after the last planned one (a declared habit). */
export const leftOverDay = (days: number): number => days - 1 + eatingHabits.leftOverDays;

/** Chance that a part has to be thrown away on a day: past its best, or no longer safe. */
export const chanceOn = (
  subject: Subject,
  part: PlannedLot,
  day: number,
  middle = qualityLife(part).middle,
): number => (pastSafe(subject, part, day) ? 1 : chanceBy(day, middle, spreadOf(part)));

/** Chance that a portion planned for a day is past its best when eaten: a share of portions is eaten some days late (a declared habit). */
export const chanceWhenEaten: typeof chanceOn = (subject, part, day, middle) =>
  (1 - eatingHabits.lateShare) * chanceOn(subject, part, day, middle) +
  eatingHabits.lateShare * chanceOn(subject, part, day + eatingHabits.lateDays, middle);

/** Whether a lot of this kind is told to keep no longer than is safe, and until then where it would keep longer. */
function withinSafeTime(subject: Subject, part: PlannedLot): PlanFault[] {
  const { life, lifeBeforeSafety } = part;
  const told = unless(
    !pastSafe(subject, part, life.late) || life.late === 0,
    "safety limit",
    `${part.id} life`,
    life.late,
    "not longer than is safe",
    "d",
  );
  if (lifeBeforeSafety === undefined) return told;
  const cut = (["early", "middle", "late"] as const).flatMap((name) => {
    const expected = Math.min(lifeBeforeSafety[name], life.late);
    return unless(alike(life[name], expected), "life", `${part.id} ${name}`, life[name], expected, "d");
  });
  // Cut short only where it has to be: an hour later it would no longer be safe.
  const short = pastSafe(subject, part, life.late + 1 / 24);
  return [...told, ...cut, ...unless(short, "life", part.id, life.late, "as long as is safe", "d")];
}

/** A last safe day is told wherever there is one, and is the right one. */
export const safeUntil = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const { plan } = subject;
    const safeOn = (day: number) => !pastSafe(subject, part, day);
    // No limit of the food code is longer than a week; what is safe after a month has none.
    const last = safeOn(31) ? undefined : Array.from({ length: 31 }, (_, day) => day).findLast(safeOn);
    const expected = safeOn(31) ? "no limit" : last === undefined ? "past" : addDays(plan.from, last);
    const told = part.safeUntil ?? "no limit";
    return unless(told === expected, "safety limit", `${part.id} safe until`, told, expected);
  });

/** A life is a range in order, log-normal about its middle (but for the limits of safety), with a known ending. */
export const life = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const { early, middle, late } = qualityLife(part);
    return [
      ...withinSafeTime(subject, part),
      ...unless(
        early >= 0 && early <= middle && middle <= late,
        "life",
        part.id,
        `${early} ${middle} ${late}`,
        "in order",
        "d",
      ),
      ...unless(alike(middle ** 2, early * late), "life", part.id, middle ** 2, early * late, "d²"),
      ...unless(endings.includes(part.endedBy), "life", part.id, part.endedBy, endings.join(", ")),
    ];
  });

/** The chance told for each meal, and for what is left over, is that of the life told. */
export const chances = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const expected = (day: number): number => chanceWhenEaten(subject, part, day);
    const meals = part.eatOn.flatMap(({ day, chancePastBest }) =>
      chancePastBest === undefined
        ? []
        : unless(
            alike(chancePastBest, expected(day)),
            "chance",
            `${part.id} day ${day}`,
            chancePastBest,
            expected(day),
          ),
    );
    if (part.ifLeft === undefined) return meals;
    const { chancePastBest } = part.ifLeft;
    const left = chanceOn(subject, part, leftOverDay(subject.plan.days));
    return [
      ...meals,
      ...unless(alike(chancePastBest, left), "chance", `${part.id} left`, chancePastBest, left),
    ];
  });
