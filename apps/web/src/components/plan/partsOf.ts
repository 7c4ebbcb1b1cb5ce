import { type HandoutContext, type PlanParts, planParts } from "@keepwright/handout";
import type { MadePlan } from "../../behaviour/usePlan.js";

interface Kept {
  readonly context: HandoutContext;
  readonly parts: PlanParts;
}

/**
 * By a plan's lots, which stay the same when it is known how good the plan is. Kept here and not with what is drawn: drawing that is begun
 * again because a letter was typed meanwhile finds what was made already.
 */
const kept = new WeakMap<MadePlan["plan"]["lots"], Kept>();

/** The parts of a plan in words, without how good it is proved to be. */
export function partsOf(context: HandoutContext, { plan, asked }: MadePlan): PlanParts {
  const before = kept.get(plan.lots);
  if (before?.context === context) return before.parts;
  const parts = planParts(context, plan, { counted: new Map(asked.lots.map((lot) => [lot.id, lot])) });
  kept.set(plan.lots, { context, parts });
  return parts;
}
