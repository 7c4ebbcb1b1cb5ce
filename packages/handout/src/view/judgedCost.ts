import { type Judgement, nextToNothing } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import type { HandoutContext } from "./context.js";
import { sameShare } from "./waste.js";

/** Differences of the objective below this [g] are none: a bite is more. */
const leastDifference = 1;

function portionsWords({ speaker }: HandoutContext, portions: number): string {
  const count = Math.round(portions);
  return count < 1 ? speaker.say("judge.portions.little") : speaker.say("judge.portions", { count });
}

function wasteLine(context: HandoutContext, { wasted }: Judgement): string {
  const { speaker, units } = context;
  const [yours, plan] = [wasted.yours, wasted.plan];
  const most = Math.max(yours.grams, plan.grams);
  if (most < nextToNothing) return speaker.say("judge.wasteNeither");
  const mass = (grams: number): string => massWords(speaker, units, grams);
  if (Math.abs(yours.grams - plan.grams) < sameShare * most)
    return speaker.say("judge.wasteEqual", { yours: mass(yours.grams) });
  return speaker.say("judge.waste", {
    yours: mass(yours.grams),
    yoursPortions: portionsWords(context, yours.portions),
    plan: mass(plan.grams),
    planPortions: portionsWords(context, plan.portions),
  });
}

/** The whole in a line where it is no worse than the plan; nothing where it is worse, for the rest tells how. */
function verdict({ speaker }: HandoutContext, { difference, findings }: Judgement): string[] {
  if (difference.total >= leastDifference) return [];
  if (findings.length > 0) return difference.total < -leastDifference ? [speaker.say("judge.betterBut")] : [];
  return [speaker.say(difference.total < -leastDifference ? "judge.better" : "judge.same")];
}

/** What an arrangement costs beside the plan: waste in mass and portions, what is lost to the eating, and whether it is as good. */
export function costLines(context: HandoutContext, judgement: Judgement): string[] {
  const { speaker, units } = context;
  const { qualityLost } = judgement.difference;
  const eating =
    qualityLost >= nextToNothing
      ? [speaker.say("judge.quality", { grams: massWords(speaker, units, qualityLost) })]
      : [];
  return [wasteLine(context, judgement), ...eating, ...verdict(context, judgement)];
}
