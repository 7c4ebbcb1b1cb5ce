import type { Plan, PlannedLot } from "@keepwright/planner";
import { addDays, type CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../view/context.js";
import { lookByLine } from "../view/lives.js";
import { isForHours, isPast } from "../view/safeTime.js";

/** The day by which a part is to be eaten, and what says so. */
export interface GoodUntil {
  /** “throw away”: it may not be eaten any more; “at once”: within hours; “for safety”: a last day that is never passed; else quality alone. */
  readonly why: "throw away" | "at once" | "for safety" | "quality";
  /** The day itself; of what is thrown away or eaten at once the first of the plan. */
  readonly date: CalendarDate;
  /** The same in a sentence. */
  readonly line: string;
}

/** The last day on which nine in ten are still good, never one before it is ready to eat. */
function qualityDay(plan: Plan, lot: PlannedLot): CalendarDate {
  const [first] = lot.stays;
  const moved = first?.moveWhen === "ripe" ? first.to : undefined;
  const ready = moved ?? addDays(plan.from, Math.max(0, lot.readyOnDay ?? 0));
  const good = addDays(plan.from, Math.max(0, lot.life.early));
  return [ready, good].sort()[1] ?? good;
}

/** By when a part of a plan is to be eaten. Food safety comes before quality: what is past its safe day has no day to be eaten by. */
export function goodUntil(context: HandoutContext, plan: Plan, lot: PlannedLot): GoodUntil {
  const { safeUntil } = lot;
  const quality = qualityDay(plan, lot);
  const line = lookByLine(context, plan, lot, addDays(plan.from, Math.max(0, lot.life.early)));
  if (isPast(lot)) return { why: "throw away", date: plan.from, line };
  if (isForHours(context, plan, lot)) return { why: "at once", date: plan.from, line };
  if (safeUntil !== undefined && safeUntil < plan.from) {
    return { why: "throw away", date: plan.from, line: context.speaker.say("life.past") };
  }
  return safeUntil === undefined
    ? { why: "quality", date: quality, line }
    : { why: "for safety", date: safeUntil, line };
}
