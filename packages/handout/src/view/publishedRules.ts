import type { LotReason, Plan } from "@keepwright/planner";
import type { HandoutContext } from "./context.js";
import { placeNames } from "./names.js";
import { ruleLines } from "./ruleLines.js";

type RuledOut = LotReason["ruledOut"][number];

/** The catalogue's own name for what everybody does and nobody published. */
const commonPractice = "common-practice";

/** A rule with where the catalogue has it from. */
function withSource({ catalogue }: HandoutContext, commodity: string, ruled: RuledOut): RuledOut {
  const figure =
    ruled.rule === "does not stand in water"
      ? catalogue.commodities.get(commodity)?.standsInWater
      : catalogue.safety.get("refrigerate-cut-within");
  const { evidence: _, ...rule } = ruled;
  if (!figure || figure.source === commonPractice) return rule;
  const { source, place, fromMemory } = figure;
  return { ...rule, evidence: { source, place, fromMemory } };
}

/**
 * The rules of a reason that a publication stands behind, each in a line with that publication, where the reason was worked out by figures
 * without their sources.
 * @param context with a catalogue that has the sources.
 */
export function publishedRuleLines(context: HandoutContext, plan: Plan, reason: LotReason): string[] {
  const ruledOut = reason.ruledOut
    .filter(({ evidence }) => evidence !== undefined)
    .map((ruled) => withSource(context, reason.commodity, ruled));
  return ruleLines(context, { ...reason, ruledOut }, placeNames(context, plan));
}
