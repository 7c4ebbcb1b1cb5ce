import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { chanceLeft } from "./cutOpen.js";
import { effort } from "./effort.js";
import { alike, type PlanFault, sum, unless } from "./fault.js";
import { chanceOn, chanceWhenEaten, keptBefore, leftOverDay, qualityLife } from "./life.js";
import { smellsTaken } from "./smells.js";
import { lotOf, portionsOf, type Subject } from "./subject.js";
import { wishesMissed } from "./wishes.js";

/** Portions of a part at one occasion: a meal, or left over. */
export interface Occasion {
  readonly day: number;
  readonly left: boolean;
  readonly grams: number;
  /** As the plan tells; the chance from its life where it does not. */
  readonly chance: number;
  readonly quality: number | undefined;
}

/** Every gram of a part at the occasion at which it is eaten or left. */
export function occasions(subject: Subject, part: PlannedLot): Occasion[] {
  const size = part.grams / portionsOf(part);
  const meals = part.eatOn.map(({ day, portions, chancePastBest, quality }) => ({
    day,
    left: false,
    grams: portions * size,
    chance: chancePastBest ?? chanceWhenEaten(subject, part, day),
    quality,
  }));
  if (part.leftPortions === 0) return meals;
  const day = leftOverDay(subject.plan.days);
  const left = {
    day,
    left: true,
    grams: part.leftPortions * size,
    chance: part.ifLeft?.chancePastBest ?? chanceLeft(subject, part, chanceOn(subject, part, day)),
    quality: part.ifLeft?.quality,
  };
  return [...meals, left];
}

export const wasteOf = (all: readonly Occasion[]): number =>
  sum(all.map(({ grams, chance }) => grams * chance));

/** Grams of quality lost; nothing where the plan does not tell every quality. */
export function qualityLostOf(all: readonly Occasion[]): number | undefined {
  if (all.some(({ quality }) => quality === undefined)) return undefined;
  return (
    sum(all.map(({ grams, chance, quality }) => grams * (1 - chance) * (1 - quality!))) * weights.qualityLost
  );
}

/** Grams for the share of the best life to be had that a part does not get; nothing where the plan does not tell it. */
export function lifeLostOf(
  all: readonly Occasion[],
  middle: number,
  best: number | undefined,
): number | undefined {
  if (best === undefined) return undefined;
  const share = best > 0 ? Math.max(0, 1 - middle / best) : 0;
  return sum(
    all.map(({ grams, left }) =>
      left
        ? grams * (weights.lifeLostLeft * share + weights.uneatenLeft)
        : grams * weights.lifeLostEaten * share,
    ),
  );
}

/** The best middle life to be had, counted as the part's own is. What had ended before has no better one. */
function bestOf(subject: Subject, part: PlannedLot): number | undefined {
  if (part.bestLife === undefined) return undefined;
  if (lotOf(subject, part).carried?.ended) return qualityLife(part).middle;
  return keptBefore(subject, part) + part.bestLife.value;
}

const total = (values: readonly (number | undefined)[]): number | undefined =>
  values.some((value) => value === undefined) ? undefined : sum(values as number[]);

/** The waste told, part by part and in all, is that of the chances told. */
export const waste = (subject: Subject): PlanFault[] => {
  const { plan } = subject;
  const each = plan.lots.map((part) => ({ part, grams: wasteOf(occasions(subject, part)) }));
  const all = sum(each.map(({ grams }) => grams));
  return [
    ...each.flatMap(({ part, grams }) =>
      unless(alike(part.expectedWaste.value, grams), "waste", part.id, part.expectedWaste.value, grams, "g"),
    ),
    ...unless(alike(plan.expectedWaste.value, all), "waste", "plan", plan.expectedWaste.value, all, "g"),
  ];
};

/** Every term of the objective is the sum of what the plan tells, and their total is their sum. */
export const objective = (subject: Subject): PlanFault[] => {
  const { plan } = subject;
  const told = plan.objective;
  const each = plan.lots.map((part) => ({ part, all: occasions(subject, part) }));
  const quality = total(each.map(({ all }) => qualityLostOf(all)));
  const lifeLost = total(
    each.map(({ part, all }) => lifeLostOf(all, qualityLife(part).middle, bestOf(subject, part))),
  );
  const over = sum(plan.overflow.map(({ litres }) => litres)) * weights.overflowLitre;
  const is = (name: string, value: number, expected: number | undefined): PlanFault[] =>
    expected === undefined ? [] : unless(alike(value, expected), "objective", name, value, expected, "g");
  const { waste: wasted, qualityLost, effort: working, overflow } = told;
  const summed = ({
    waste: one,
    qualityLost: two,
    lifeLost: three,
    effort: four,
    overflow: five,
    wishesMissed: six,
  }: typeof told): number => one + two + three + four + five + six;
  return [
    ...is("waste", wasted, sum(each.map(({ all }) => wasteOf(all)))),
    ...is("qualityLost", qualityLost, quality === undefined ? undefined : quality + smellsTaken(subject)),
    ...is("lifeLost", told.lifeLost, lifeLost),
    ...is("effort", working, effort(subject)),
    ...is("overflow", overflow, over),
    ...is("wishesMissed", told.wishesMissed, wishesMissed(subject)),
    ...is("total", told.total, summed(told)),
    ...is("total unsorted", plan.unsorted.objective.total, summed(plan.unsorted.objective)),
    ...is("waste unsorted", plan.unsorted.expectedWaste.value, plan.unsorted.objective.waste),
  ];
};
