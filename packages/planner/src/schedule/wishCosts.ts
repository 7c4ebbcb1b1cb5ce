import type { LotOutcome } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Household } from "../problem/kitchen.js";
import { chancePastBy } from "../rules/lifeLeft.js";
import { eatingHabits } from "../rules/weights.js";
import { dayIfLeft, middleOfReady, type Prospects, wishCost } from "../rules/wishes.js";

/** Standard deviations of ln(life) and of ln(time to ripen) [1]. */
export interface PaceSpreads {
  readonly life: number;
  readonly ripening: number;
}

/** When a lot gets ready and when it is past its best or no longer safe, as a wish is judged by. */
export function prospectsOf(
  lot: BoundLot,
  outcome: LotOutcome,
  spreads: PaceSpreads,
  lastSafe: number,
): Prospects {
  return {
    readiness: { ...middleOfReady(outcome, lot.ripeness), spread: spreads.ripening },
    pastBy: (day) => (day > lastSafe ? 1 : chancePastBy(lot, outcome, spreads.life, day)),
  };
}

/** The day that stands for what is left over of a lot with a wish [d]. */
export const leftDayOf = ({ wish }: BoundLot, { days }: Household): number =>
  dayIfLeft(wish!, days, days - 1 + eatingHabits.leftOverDays);

interface WishCosts {
  /** Cost of a gram eaten on each planned day [g]. */
  readonly missed: readonly number[];
  readonly missedLeft: number;
}

const missingNothing: WishCosts[] = [];

/** The same for every lot without a wish, so made once for each number of days. */
function nothingMissed(days: number): WishCosts {
  missingNothing[days] ??= { missed: new Array<number>(days).fill(0), missedLeft: 0 };
  return missingNothing[days];
}

/** What a wish costs for each gram of a part, by the day it is eaten and left over. Nothing where there is no wish. */
export function wishCostsOf(
  lot: BoundLot,
  outcome: LotOutcome,
  spreads: PaceSpreads,
  household: Household,
  lastSafe: number,
): WishCosts {
  const { wish } = lot;
  if (!wish) return nothingMissed(household.days);
  const prospects = prospectsOf(lot, outcome, spreads, lastSafe);
  const cost = (day: number): number => wishCost(wish, prospects, day);
  return {
    missed: Array.from({ length: household.days }, (_, day) => cost(day)),
    missedLeft: cost(leftDayOf(lot, household)),
  };
}
