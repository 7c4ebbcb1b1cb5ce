import type { Neighbour, Neighbourhood } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";

/** Names of whole lots by their ids. */
export type LotNames = ReadonlyMap<string, string>;

/** Most neighbours that are spoken of: the worst say enough. */
const mostNeighbours = 2;

/** Share of what a neighbour takes that one of its means must take or give to be spoken of beside the other. */
const worthTelling = 0.1;

const about = ({ speaker }: HandoutContext, days: number): string => spanWords(speaker, days, days);

/** By which means a neighbour takes days: the gas it gives off, its damp, or both. */
export function meansLine(context: HandoutContext, { byEthylene, byVapour }: Neighbour): string[] {
  const { say } = context.speaker;
  const [gas, damp] = [byEthylene.value, byVapour.value];
  const least = worthTelling * Math.max(Math.abs(gas), Math.abs(damp));
  if (least === 0) return [];
  const values = { gas: about(context, Math.abs(gas)), damp: about(context, Math.abs(damp)) };
  if (Math.abs(damp) < least) return gas > 0 ? [say("why.means.gas")] : [];
  if (Math.abs(gas) < least) return damp > 0 ? [say("why.means.damp")] : [];
  if (gas > 0 && damp > 0) return [say("why.means.both", values)];
  if (gas > 0) return [say("why.means.gasButDamp", values)];
  return damp > 0 ? [say("why.means.dampButGas", values)] : [];
}

/** What the leaving of each that shortens a life would change, and by which means; nothing where the words would be the same. */
export function harmLines(
  context: HandoutContext,
  { neighbours }: Neighbourhood,
  life: number,
  names: LotNames,
): string[] {
  const now = about(context, life);
  return neighbours.slice(0, mostNeighbours).flatMap((one) => {
    const span = about(context, one.lifeWithout.value);
    const name = names.get(one.lot) ?? plainText(one.lot);
    if (span === now) return [];
    const head = context.speaker.say("why.neighbour", { name, span, now });
    return [[head, ...meansLine(context, one)].join(" ")];
  });
}

/** Who makes it last longer. */
export function helpLines(
  context: HandoutContext,
  { helpers }: Neighbourhood,
  life: number,
  names: LotNames,
): string[] {
  const now = about(context, life);
  return helpers.slice(0, mostNeighbours).flatMap((one) => {
    const span = about(context, one.lifeWithout.value);
    const name = names.get(one.lot) ?? plainText(one.lot);
    if (span === now) return [];
    const damp = one.byVapour.value < 0 && one.byVapour.value <= one.byEthylene.value;
    return [context.speaker.say(damp ? "why.helper" : "why.helperOther", { name, span, now })];
  });
}

/** Where neighbours act together, what the worst of them does by itself: somebody is named. */
export function worstAloneLines(
  context: HandoutContext,
  { neighbours, lifeAlone, joint }: Pick<Neighbourhood, "neighbours" | "lifeAlone" | "joint">,
  names: LotNames,
): string[] {
  const [worst] = joint ? neighbours : [];
  if (!worst) return [];
  const name = names.get(worst.lot) ?? plainText(worst.lot);
  const span = about(context, lifeAlone.value - worst.daysLostBesideItAlone.value);
  return [context.speaker.say("judge.why.onlyNeighbour", { name, span })];
}

/** What all neighbours do together, and that they act together where that is so. */
export function togetherLines(
  context: HandoutContext,
  { lifeAlone, joint }: Neighbourhood,
  life: number,
): string[] {
  const span = about(context, lifeAlone.value);
  if (span === about(context, life)) return [];
  const { say } = context.speaker;
  return [say("why.noNeighbours", { span, now: about(context, life) }), ...(joint ? [say("why.joint")] : [])];
}
