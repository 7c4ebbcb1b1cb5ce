import { type LotOutcome, publicationSpread } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Programme } from "../problem/programme.js";
import { programmeEffort } from "../rules/effort.js";
import { chancePastBy } from "../rules/lifeLeft.js";
import { dailyLimit } from "../rules/portionsADay.js";
import { lastSafeDay } from "../rules/safeTime.js";
import { eatingHabits } from "../rules/weights.js";
import { gramCost } from "../schedule/partCosts.js";
import { pricedCost } from "../schedule/pricedCost.js";
import { wishCostsOf } from "../schedule/wishCosts.js";
import type { Solos } from "./solos.js";

/** What a lot's portions cost one by one [g a gram]: on each planned day (Infinity where it may not be eaten), and left over. */
interface PortionCosts {
  readonly days: readonly number[];
  readonly left: number;
}

function portionCosts(solos: Solos, lot: BoundLot, programme: Programme, outcome: LotOutcome): PortionCosts {
  const { household } = solos.problem;
  const lastSafe = lastSafeDay(solos.problem, lot, programme, outcome.stayStarts);
  const spread = Math.hypot(lot.produce.lifeSpread, publicationSpread.betweenReports);
  const gram = (day: number, quality: number): number =>
    day > lastSafe ? 1 : gramCost(chancePastBy(lot, outcome, spread, day), quality);
  const wish = wishCostsOf(lot, outcome, { life: spread, ripening: spread }, household, lastSafe);
  const days = Array.from({ length: household.days }, (_, day) =>
    day < outcome.ripeDay || day > lastSafe
      ? Number.POSITIVE_INFINITY
      : gram(day, outcome.quality[day]!) + wish.missed[day]!,
  );
  const leftDay = household.days - 1 + eatingHabits.leftOverDays;
  return { days, left: gram(leftDay, outcome.quality[household.days]!) + wish.missedLeft };
}

/** Every portion on the earliest day it may be eaten: what people do who want nothing for a day. */
function eatenSoon({ days, left }: PortionCosts, portions: number, limit: number): number {
  let uneaten = portions;
  let cost = 0;
  for (let day = 0; day < days.length && uneaten > 0; day++) {
    if (!Number.isFinite(days[day]!)) continue;
    const eaten = Math.min(limit, uneaten);
    cost += eaten * days[day]!;
    uneaten -= eaten;
  }
  return cost + uneaten * left;
}

/**
 * Quick cost of a lot alone: every portion on its earliest free day, or where it is wanted for a day on its cheapest; no crowd at the table, and
 * the loss of life left to the real judgement.
 */
export function soloCost(solos: Solos, lot: BoundLot, programme: Programme, outcome: LotOutcome): number {
  const { household } = solos.problem;
  const limit = dailyLimit(lot, household);
  const costs = portionCosts(solos, lot, programme, outcome);
  const free = new Float64Array(household.days);
  const cost = lot.wish
    ? pricedCost(lot.portions, costs.days, costs.left, free, limit)
    : eatenSoon(costs, lot.portions, limit);
  // A long life is worth something even where all is eaten in time; a hundredth a tenfold only settles near ties.
  const patience = 0.03 * lot.portions * Math.log10(Math.max(outcome.endDay, 0.1));
  return (cost - patience) * lot.gramsPerPortion + programmeEffort(programme, lot);
}
