import type { PlanAsked } from "./planMessages.js";

/** Lots that may have come, gone or changed: a correction changes one, a hasty hand a few. Declared preference, no source. */
const mostCorrected = 3;

/** All that came home, whenever it did. */
const all = ({ lots, since }: PlanAsked): string[] =>
  [...lots, ...(since?.cameHome ?? [])].map((lot) => JSON.stringify(lot));

/** Whether a question is a corrected other one: same kitchen, household and days, and nearly the same things, whatever of them was eaten and moved since. */
export function isCorrected(before: PlanAsked, now: PlanAsked): boolean {
  const rest = ({ lots: _, since, ...all }: PlanAsked) => JSON.stringify({ ...all, on: since?.on });
  if (rest(before) !== rest(now)) return false;
  const had = all(before);
  const has = all(now);
  const known = new Set(had);
  const same = has.filter((lot) => known.has(lot)).length;
  return Math.max(had.length, has.length) - same <= mostCorrected;
}
