import { nextToNothing, type Plan } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import { isCold } from "./coldPlaces.js";
import type { HandoutContext } from "./context.js";

/** Two figures nearer than this share of the larger are told as the same: the lives behind them are not known better. */
export const sameShare = 0.1;

/** What the plan is worth in edible mass, against everything in the refrigerator unsorted; never more than it shows. */
export function wasteLine({ speaker, units }: HandoutContext, plan: Plan): string {
  const here = plan.expectedWaste.value;
  const unsorted = plan.unsorted.expectedWaste.value;
  const values = { plan: massWords(speaker, units, here), unsorted: massWords(speaker, units, unsorted) };
  if (!plan.places.some(isCold)) return speaker.say("waste.alone", { plan: values.plan });
  if (Math.max(here, unsorted) < nextToNothing) return speaker.say("waste.neither");
  if (Math.abs(here - unsorted) < sameShare * Math.max(here, unsorted))
    return speaker.say("waste.equal", values);
  if (here > unsorted) {
    const better = plan.objective.total < plan.unsorted.objective.total;
    return speaker.say(better ? "waste.worse" : "waste.worseAll", values);
  }
  return here < nextToNothing ? speaker.say("waste.none", values) : speaker.say("waste.both", values);
}
