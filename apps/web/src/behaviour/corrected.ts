import type { PlanAsked } from "./planMessages.js";

/** Lots that may have come, gone or changed: a correction changes one, a hasty hand a few. Declared preference, no source. */
const mostCorrected = 3;

/** Whether a question is a corrected other one: same kitchen, household, day and days gone by, and nearly the same things. */
export function isCorrected(before: PlanAsked, now: PlanAsked): boolean {
  const rest = ({ lots: _, ...all }: PlanAsked) => JSON.stringify(all);
  if (rest(before) !== rest(now)) return false;
  const had = new Set(before.lots.map((lot) => JSON.stringify(lot)));
  const same = now.lots.filter((lot) => had.has(JSON.stringify(lot))).length;
  return Math.max(before.lots.length, now.lots.length) - same <= mostCorrected;
}
