import { type HandoutContext, type PlanParts, planParts, shortCutOpenLines } from "@keepwright/handout";
import type { MadePlan } from "../../behaviour/usePlan.js";
import { type Marks, marksOf } from "./marks.js";

/** The parts of a plan, how its lots are marked, and what is eaten over several days once it is cut in as few words as will do. */
export interface PageParts extends PlanParts {
  readonly marks: Marks;
  readonly shortCutOpen: () => readonly string[];
}

interface Kept {
  readonly context: HandoutContext;
  readonly parts: PageParts;
}

/**
 * By a plan's lots, which stay the same when it is known how good the plan is. Kept here and not with what is drawn: drawing that is begun
 * again because a letter was typed meanwhile finds what was made already.
 */
const kept = new WeakMap<MadePlan["plan"]["lots"], Kept>();

/** The parts of a plan in words, without how good it is proved to be. */
export function partsOf(context: HandoutContext, { plan, asked }: MadePlan): PageParts {
  const before = kept.get(plan.lots);
  if (before?.context === context) return before.parts;
  const parts = {
    ...planParts(context, plan, { counted: new Map(asked.lots.map((lot) => [lot.id, lot])) }),
    marks: marksOf(plan),
    shortCutOpen: () => shortCutOpenLines(context, plan),
  };
  kept.set(plan.lots, { context, parts });
  return parts;
}
