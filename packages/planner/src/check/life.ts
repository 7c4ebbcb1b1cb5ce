import { endings } from "@keepwright/physics";
import { addDays, normalDistribution, normalNinetiethPercentile } from "@keepwright/quantities";
import type { PlannedLot } from "../problem/plan.js";
import { eatingHabits } from "../rules/weights.js";
import { chanceLeft } from "./cutOpen.js";
import { alike, type PlanFault, unless } from "./fault.js";
import { pastSafe } from "./safety.js";
import { lotOf, type Subject } from "./subject.js";

/** The life by quality alone: as told, or as it would be where the safe time cuts the told one short. */
const qualityLeft = ({ life, lifeBeforeSafety }: PlannedLot): PlannedLot["life"] => lifeBeforeSafety ?? life;

/** The same, of what was carried over from an earlier plan counted from when it came home. */
export const qualityLife = (part: PlannedLot): PlannedLot["life"] => part.wholeLife ?? qualityLeft(part);

/** Days for which a part had been kept before the first day: those an earlier plan had it. */
export const keptBefore = (subject: Subject, part: PlannedLot): number =>
  lotOf(subject, part).carried?.daysBefore ?? 0;

/** The chance by a day given that it was seen good on one before; both counted as the life is. */
const chanceSince = (day: number, seen: number, middle: number, spread: number): number => {
  if (day <= seen) return 0;
  const then = chanceBy(seen, middle, spread);
  return then >= 1 ? 1 : (chanceBy(day, middle, spread) - then) / (1 - then);
};

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
): number => {
  if (pastSafe(subject, part, day)) return 1;
  const { daysBefore = 0, seenGoodOn = 0 } = lotOf(subject, part).carried ?? {};
  return chanceSince(daysBefore + day, seenGoodOn, middle, spreadOf(part));
};

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

/** What is left of a life told from when a lot came home is that life less the days it was kept before, never below none; where it was seen good, at the same chances. */
function lifeStillLeft(subject: Subject, part: PlannedLot): PlanFault[] {
  const { carried } = lotOf(subject, part);
  const { wholeLife } = part;
  if (!carried || !wholeLife) {
    const told = wholeLife ? "a whole life" : "no whole life";
    const expected = carried ? "a whole life" : "no whole life";
    return unless(told === expected, "life", part.id, told, expected);
  }
  const left = qualityLeft(part);
  return (["early", "middle", "late"] as const).flatMap((name, index) => {
    if (carried.seenGoodOn === 0) {
      const expected = Math.max(0, wholeLife[name] - carried.daysBefore);
      return unless(
        alike(left[name], expected),
        "life",
        `${part.id} ${name} left`,
        left[name],
        expected,
        "d",
      );
    }
    const day = carried.daysBefore + left[name];
    const chance = chanceSince(day, carried.seenGoodOn, wholeLife.middle, spread(wholeLife));
    const expected = [0.1, 0.5, 0.9][index]!;
    const holds = alike(chance, expected, 1e-4) || (left[name] === 0 && chance >= expected);
    return unless(holds, "life", `${part.id} ${name} left`, chance, expected);
  });
}

/** A life is a range in order, log-normal about its middle (but for the limits of safety), with a known ending. */
export const life = (subject: Subject): PlanFault[] =>
  subject.plan.lots.flatMap((part) => {
    const { early, middle, late } = qualityLife(part);
    return [
      ...withinSafeTime(subject, part),
      ...lifeStillLeft(subject, part),
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
    const left = chanceLeft(subject, part, chanceOn(subject, part, leftOverDay(subject.plan.days)));
    return [
      ...meals,
      ...unless(alike(chancePastBest, left), "chance", `${part.id} left`, chancePastBest, left),
    ];
  });
