import type { PlannedLot } from "@keepwright/planner";
import { addDays } from "@keepwright/quantities";

type Stay = PlannedLot["stays"][number];

/**
 * The stays of a part as they are told: without those that begin on the day of its last meal or later while nothing of it is left over. Such a move, when it is
 * ripe, counts for the planner, since it may get ripe sooner; told for the very day on which all of it is eaten it would be work for nothing. The stay before it
 * then ends with the last meal, as a last stay does.
 */
export function toldStays({ stays, eatOn, leftPortions }: PlannedLot): readonly Stay[] {
  const lastMeal = eatOn.findLast(({ portions }) => portions > 0)?.date;
  if (leftPortions > 0 || lastMeal === undefined) return stays;
  const told = stays.filter((stay, index) => index === 0 || stay.from < lastMeal);
  if (told.length === stays.length) return stays;
  const { moveWhen: _, toDay: __, ...last } = told.at(-1)!;
  return [...told.slice(0, -1), { ...last, to: addDays(lastMeal, 1) }];
}
