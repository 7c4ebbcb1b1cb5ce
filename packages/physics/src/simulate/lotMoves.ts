import { at as position } from "../produce/lotState.js";
import { stateRates } from "../produce/stateRates.js";
import { airAround, type MutableConditions } from "./airAround.js";
import { isRipe, type RunningLot } from "./runningLot.js";
import type { BoxAir } from "./stageAir.js";

/** Times closer than this [d] count as the same (a tenth of a second). */
export const sameTime = 1e-6;

/** d(state)/dt of a lot where it is, in the air of a stage. */
export function ratesIn(
  lot: RunningLot,
  state: Float64Array,
  air: BoxAir,
  conditions: MutableConditions,
  out: Float64Array,
): void {
  const stay = lot.stays[lot.stay]!;
  const { surface, emission } = lot.given;
  airAround(stay, surface, emission, air.density[stay.box]!, air.ethylene[stay.box]!, conditions);
  stateRates(stay.at, state, conditions, out);
}

const hasNextStay = (lot: RunningLot): boolean => lot.stay + 1 < lot.stays.length;

/** Makes the moves that are due on a day: by the day, or because the lot is ripe. Says whether there were any. */
export function makeMoves(lot: RunningLot, day: number): boolean {
  let moved = false;
  while (hasNextStay(lot)) {
    const { untilDay, untilRipe } = lot.stays[lot.stay]!;
    if (untilDay > day + sameTime && !(untilRipe && isRipe(lot))) break;
    if (untilRipe) settleRipeness(lot, day);
    lot.stay++;
    lot.record.stayStarts[lot.stay] = day;
    moved = true;
  }
  return moved;
}

/** A lot moved because it is nearly ripe is ripe from then on, or in the cold it might never be. */
function settleRipeness(lot: RunningLot, day: number): void {
  if (!lot.ripens || lot.state[position.ripeness]! >= 1) return;
  lot.state[position.ripeness] = 1;
  lot.record.ripeDay = day;
}

/** Days until a lot moves, foreseen from its rates now; Infinity when it stays. */
export function daysUntilMove(
  lot: RunningLot,
  day: number,
  air: BoxAir,
  conditions: MutableConditions,
): number {
  if (!hasNextStay(lot)) return Number.POSITIVE_INFINITY;
  const stay = lot.stays[lot.stay]!;
  return stay.untilRipe ? daysUntilRipe(lot, air, conditions) : stay.untilDay - day;
}

/** Days until a lot is ripe, by its rate of ripening now; Infinity when it is ripe already or does not ripen here. */
export function daysUntilRipe(lot: RunningLot, air: BoxAir, conditions: MutableConditions): number {
  const missing = 1 - lot.state[position.ripeness]!;
  if (!lot.ripens || missing <= 0) return Number.POSITIVE_INFINITY;
  if (!lot.ratesHold) {
    ratesIn(lot, lot.state, air, conditions, lot.rates);
    lot.ratesHold = true;
  }
  const rate = lot.rates[position.ripeness]!;
  return rate > 0 ? missing / rate : Number.POSITIVE_INFINITY;
}
