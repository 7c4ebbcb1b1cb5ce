import type { LotReason, Plan } from "@keepwright/planner";
import type { HandoutContext } from "./context.js";
import { placeNames, wholeLotNames } from "./names.js";
import { harmLines, helpLines, type LotNames, togetherLines, worstAloneLines } from "./neighbourLines.js";
import { rivalLine } from "./rivalLines.js";

/** Most other places and wraps that are spoken of: the nearest rivals say enough. */
const mostPlaces = 3;
const mostWraps = 1;

/** What neighbours do to it where it lies: who shortens its life, by gas or by damp, and who lengthens it. */
export function neighbourLines(context: HandoutContext, { here }: LotReason, names: LotNames): string[] {
  const { neighbourhood, life } = here;
  const lines = [
    ...harmLines(context, neighbourhood, life.middle, names),
    ...helpLines(context, neighbourhood, life.middle, names),
    ...worstAloneLines(context, neighbourhood, names),
    ...togetherLines(context, neighbourhood, life.middle),
  ];
  return lines.length > 0 ? lines : [context.speaker.say("why.nobody")];
}

/** Names of whole lots, as the neighbours of one part are called: the rest of its own lot by that. */
export const neighbourNames = (context: HandoutContext, plan: Plan, { lot }: LotReason): LotNames =>
  new Map([...wholeLotNames(context, plan), [lot, context.speaker.say("why.theRest")]]);

/** Why a lot lies where it lies, in few lines: beside the nearest other places and wraps, and what its neighbours do to it. */
export function lotReasonLines(context: HandoutContext, plan: Plan, reason: LotReason): string[] {
  const names = {
    lots: neighbourNames(context, plan, reason),
    places: placeNames(context, plan),
    kind: plan.lots.find(({ id }) => id === reason.part),
  };
  const { elsewhere, wraps } = reason;
  return [
    ...elsewhere
      .slice(0, mostPlaces)
      .map((rival) => rivalLine(context, rival, names, { what: "place", full: false })),
    ...wraps
      .slice(0, mostWraps)
      .map((rival) => rivalLine(context, rival, names, { what: "wrap", full: false })),
    ...neighbourLines(context, reason, names.lots),
  ];
}
