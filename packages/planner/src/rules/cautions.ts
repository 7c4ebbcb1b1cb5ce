import type { BoundLot } from "../problem/bindHaul.js";
import { isTooWarm } from "../problem/kitchenWarnings.js";
import type { PlannedLot } from "../problem/plan.js";
import type { Problem } from "../problem/problem.js";
import { trimsMould } from "./trimsMould.js";
import { hasSafeTime } from "./underControl.js";

const anyLot = (problem: Problem, holds: (lot: BoundLot) => boolean): boolean => problem.lots.some(holds);

function refrigeratorTooWarm({ kitchen, catalogue }: Problem): boolean {
  return kitchen.refrigerators.some((one) => isTooWarm(one, catalogue));
}

const mayBeTrimmed = ({ form, commodity }: BoundLot): boolean => !form.cut && trimsMould(commodity.id);

/** Leaves said to be washed, or sold so. */
const isWashedGreen = ({ lot, produce, commodity }: BoundLot): boolean =>
  commodity.organ === "leaf" && (lot.washed || produce.controlledAsSold === true);

/**
 * Safety cautions that hold for a haul in a kitchen, by name; their words are made in handout. Always ends with the
 * reminder that local food-safety codes come first.
 *
 * @param planned the parts of the plan, where there is one: whole pieces that it has eaten over several days are cut too
 */
export function cautions(problem: Problem, planned: readonly Pick<PlannedLot, "cutOpen">[] = []): string[] {
  const open = planned.flatMap(({ cutOpen = [] }) => cutOpen);
  const cut = anyLot(problem, hasSafeTime) || open.length > 0;
  // Where there is no refrigerator, nothing is told to be put in one.
  const cold = problem.places.some((place) => place.cold);
  const holds: readonly (readonly [string, boolean])[] = [
    ["wild-mushrooms", anyLot(problem, (lot) => lot.commodity.id === "wild-mushroom")],
    ["refrigerator-too-warm", refrigeratorTooWarm(problem)],
    ["no-refrigerator-for-cut-produce", cut && !cold],
    ["cut-produce", cut && cold],
    [
      "cut-ready-to-eat",
      cold &&
        (anyLot(problem, (lot) => hasSafeTime(lot) && lot.produce.timeTemperatureControl) ||
          open.some(({ safeUntil }) => safeUntil !== undefined)),
    ],
    ["washed-greens", anyLot(problem, isWashedGreen)],
    ["green-potatoes", anyLot(problem, (lot) => lot.produce.greensInLightDays !== undefined)],
    ["garlic-in-oil", anyLot(problem, (lot) => lot.commodity.id === "garlic")],
    ["mould-soft", anyLot(problem, (lot) => !mayBeTrimmed(lot))],
    ["mould-firm", anyLot(problem, mayBeTrimmed)],
    ["local", true],
  ];
  return holds.filter(([, applies]) => applies).map(([name]) => name);
}
