import { endings } from "@keepwright/physics";
import { normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { eatingHabits } from "../rules/weights.js";
import { alike, type PlanFault, unless } from "./fault.js";
import { pastSafe } from "./safety.js";
import type { Subject } from "./subject.js";

/** Standard deviation of ln(life), from the early and late days a plan tells (10 % and 90 % of a log-normal life). */
export const spreadOf = ({ life }: PlannedLot): number =>
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
  middle = part.life.middle,
): number => (pastSafe(subject, part, day) ? 1 : chanceBy(day, middle, spreadOf(part)));

/** Chance that a portion planned for a day is past its best when eaten: a share of portions is eaten some days late (a declared habit). */
export const chanceWhenEaten: typeof chanceOn = (subject, part, day, middle) =>
  (1 - eatingHabits.lateShare) * chanceOn(subject, part, day, middle) +
  eatingHabits.lateShare * chanceOn(subject, part, day + eatingHabits.lateDays, middle);

/** A life is a range in order, log-normal about its middle, with a known ending. */
export const life = ({ plan }: Subject): PlanFault[] =>
  plan.lots.flatMap((part) => {
    const { early, middle, late } = part.life;
    return [
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
