import type { PlannedLot } from "../problem/plan.js";
import { weights } from "../rules/weights.js";
import { aheadOfPace } from "./eating.js";
import { sum } from "./fault.js";
import { lotOf, type Subject } from "./subject.js";

function effortOf(subject: Subject, part: PlannedLot): number {
  const { stays } = part;
  const wrapped = stays.filter((stay, index) => stay.wrap !== stays[index - 1]?.wrap);
  const lot = lotOf(subject, part);
  return (
    sum(wrapped.map((stay) => weights.wrap[stay.wrap])) +
    (stays.length - 1) * weights.move +
    (lot.tops && !part.tops ? weights.leavesOff : 0) +
    (lot.washed && part.preparation.includes("dry well") ? weights.drying : 0)
  );
}

/** Effort of a whole plan [g]: wrapping, moving, preparing, and each further part of a lot. */
export const effort = (subject: Subject): number =>
  sum(subject.plan.lots.map((part) => effortOf(subject, part))) +
  (subject.plan.lots.length - subject.haul.lots.length) * weights.split +
  aheadOfPace(subject) * weights.aheadOfPace;
