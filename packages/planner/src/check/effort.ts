import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { lotOf, type Subject } from "./subject.js";

/**
 * Grams of effort of one part: least and most. They differ only where the plan leaves out a last stay that would begin after
 * the planned days: that it exists is known by the reason to move, but not its wrap.
 */
function effortOf(subject: Subject, part: PlannedLot): { least: number; most: number } {
  const { stays } = part;
  const wrapping = stays
    .filter((stay, index) => stay.wrap !== stays[index - 1]?.wrap)
    .map((stay) => weights.wrap[stay.wrap]);
  const unnamed = stays.at(-1)!.moveWhen === undefined ? 0 : 1;
  const lot = lotOf(subject, part);
  const known =
    wrapping.reduce<number>((total, grams) => total + grams, 0) +
    (stays.length - 1 + unnamed) * weights.move +
    (lot.tops && !part.tops ? weights.leavesOff : 0) +
    (lot.washed && part.preparation.includes("dry well") ? weights.drying : 0);
  return { least: known, most: known + unnamed * Math.max(...Object.values(weights.wrap)) };
}

/** Effort of a whole plan [g]: wrapping, moving, preparing, and each further part of a lot. */
export function effort(subject: Subject): { least: number; most: number } {
  const splits = (subject.plan.lots.length - subject.haul.lots.length) * weights.split;
  const each = subject.plan.lots.map((part) => effortOf(subject, part));
  return {
    least: each.reduce((total, { least }) => total + least, splits),
    most: each.reduce((total, { most }) => total + most, splits),
  };
}
