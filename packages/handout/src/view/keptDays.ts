import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays, type CalendarDate, daysBetween } from "@keepwright/quantities";

/** The days that are told of how a part keeps: the same on every paper, so that none says another day than the next. */
export interface KeptDays {
  /** The day it is ready, where it came unripe and gets ripe. */
  readonly ready: CalendarDate | undefined;
  /**
   * From then on it is to be looked at: until then nine in ten of such lots are still good. Never before it is ready. It is no last day: the plan may have it
   * eaten later, as long as that is likelier than not to be in time.
   */
  readonly check: CalendarDate;
  /** Days from the first of the plan to `check`. */
  readonly checkDay: number;
}

/** What is moved when ripe is told ready on the day of the move: one event, one date. */
export function readyDay(plan: Plan, lot: PlannedLot): CalendarDate | undefined {
  if (lot.readyOnDay === null || lot.readyOnDay < 1) return undefined;
  const [first] = lot.stays;
  const moved = first?.moveWhen === "ripe" ? first.to : undefined;
  return moved ?? addDays(plan.from, lot.readyOnDay);
}

export function keptDays(plan: Plan, lot: PlannedLot): KeptDays {
  const ready = readyDay(plan, lot);
  const good = addDays(plan.from, Math.max(0, lot.life.early));
  const check = ready !== undefined && ready > good ? ready : good;
  return { ready, check, checkDay: daysBetween(plan.from, check) };
}
