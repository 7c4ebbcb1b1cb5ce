import type { Course } from "@keepwright/planner";

/** What a curve tells of: each is 0 on arrival (or fresh) and 1 where it alone has ended the lot. */
export type CurveName = "ageing" | "water" | "ripeness";

export interface Curve {
  readonly name: CurveName;
  /** One for the start of each planned day and one for the end. */
  readonly values: readonly number[];
}

/** Ripeness runs from 0 to 2, where it is over-ripe. */
const overRipe = 2;

interface CurvesFor {
  readonly course: Course;
  /** Loss of water at which it is limp [share of the mass on arrival]. */
  readonly mostWater: number;
  readonly ripens: boolean;
}

/** Ageing, water and ripeness on one scale: how far each has come to what ends it. */
export function curvesOf({ course, mostWater, ripens }: CurvesFor): readonly Curve[] {
  return [
    { name: "ageing", values: course.ageing },
    { name: "water", values: course.waterLost.map((lost) => lost / mostWater) },
    ...(ripens
      ? [{ name: "ripeness" as const, values: course.ripeness.map((ripeness) => ripeness / overRipe) }]
      : []),
  ];
}

/** Size of the drawing and of the part of it within the axes [drawing units]. */
export const chart = { width: 356, height: 250, left: 38, right: 262, top: 12, bottom: 190 } as const;

export const across = (day: number, days: number): number =>
  chart.left + (chart.right - chart.left) * Math.min(1, Math.max(0, day / days));

/** What is beyond its end is drawn at the upper edge: it is told by the words, not by the height. */
export const up = (value: number): number =>
  chart.bottom - (chart.bottom - chart.top) * Math.min(1, Math.max(0, value));

export const pathOf = ({ values }: Curve): string =>
  values
    .map(
      (value, day) =>
        `${day === 0 ? "M" : "L"}${across(day, values.length - 1).toFixed(1)} ${up(value).toFixed(1)}`,
    )
    .join("");

/** Least distance between two names beside the ends of their curves [drawing units]. */
const leastApart = 15;

/** Heights at which the names of curves stand, each as near its end as the others let it; in the order given. */
export function labelHeights(ends: readonly number[]): number[] {
  const order = ends.map((_, index) => index).sort((one, other) => ends[one]! - ends[other]!);
  const heights = [...ends];
  let least = chart.top;
  for (const index of order) {
    heights[index] = Math.max(ends[index]!, least);
    least = heights[index]! + leastApart;
  }
  let most = chart.bottom;
  for (const index of order.toReversed()) {
    heights[index] = Math.min(heights[index]!, most);
    most = heights[index]! - leastApart;
  }
  return heights;
}

/** Every how many days a day is written on the axis, so that they do not touch. */
export const dayStep = (days: number): number => (days <= 12 ? 2 : days <= 16 ? 4 : 5);
