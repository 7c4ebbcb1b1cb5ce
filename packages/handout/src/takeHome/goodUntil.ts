import type { Plan, PlannedLot } from "@keepwright/planner";
import type { CalendarDate } from "@keepwright/quantities";
import type { HandoutContext } from "../view/context.js";
import { keptDays } from "../view/keptDays.js";
import { lookByLine } from "../view/lives.js";
import { isForHours, isPast } from "../view/safeTime.js";

/** The day by which a part is to be eaten, and what says so. */
export interface GoodUntil {
  /** “throw away”: it may not be eaten any more; “at once”: within hours; “for safety”: a last day that is never passed; else quality alone: then it is the day to look at it from, and no last one. */
  readonly why: "throw away" | "at once" | "for safety" | "quality";
  /** The day itself; of what is thrown away or eaten at once the first of the plan. */
  readonly date: CalendarDate;
  /** The same in a sentence. */
  readonly line: string;
}

/** By when a part of a plan is to be eaten. Food safety comes before quality: what is past its safe day has no day to be eaten by. */
export function goodUntil(context: HandoutContext, plan: Plan, lot: PlannedLot): GoodUntil {
  const { safeUntil } = lot;
  const { check: quality } = keptDays(plan, lot);
  const line = lookByLine(context, plan, lot, quality);
  if (isPast(lot)) return { why: "throw away", date: plan.from, line };
  if (isForHours(context, plan, lot)) return { why: "at once", date: plan.from, line };
  if (safeUntil !== undefined && safeUntil < plan.from) {
    return { why: "throw away", date: plan.from, line: context.speaker.say("life.past") };
  }
  return safeUntil === undefined
    ? { why: "quality", date: quality, line }
    : { why: "for safety", date: safeUntil, line };
}
