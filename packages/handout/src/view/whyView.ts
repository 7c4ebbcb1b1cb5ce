import type { LotReason, Plan } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import { spanWords } from "../words/spans.js";
import type { HandoutContext } from "./context.js";
import { type EndedLot, endingWords } from "./endingWords.js";
import { neighbourLines, neighbourNames } from "./lotReasonLines.js";
import { lotNames, placeNames } from "./names.js";
import { rivalLine } from "./rivalLines.js";
import { ruleLines } from "./ruleLines.js";

/** Why one part lies where it does: where that is, and the reasons. */
export interface WhyView {
  readonly part: string;
  readonly line: string;
  /** What neighbours do to it. */
  readonly neighbours: readonly string[];
  /** Every other place, and every other wrap in the same place, that was simulated. */
  readonly elsewhere: readonly string[];
  readonly wraps: readonly string[];
  /** What hard rules leave out. */
  readonly rules: readonly string[];
  /** All of these in this order. */
  readonly reasons: readonly string[];
}

function hereLine(
  context: HandoutContext,
  { here }: LotReason,
  kind: EndedLot | undefined,
  name: string,
  places: ReadonlyMap<string, string>,
): string {
  const { speaker } = context;
  const place = (id: string): string => places.get(id) ?? plainText(id);
  const values = {
    name: speaker.capital(name),
    place: place(here.place),
    wrap: speaker.say(`wrap.${here.wrap}`),
    span: speaker.capital(spanWords(speaker, here.life.early, here.life.late)),
    ending: endingWords(context, kind, here.endedBy),
  };
  if (!here.ripensIn) return speaker.say("why.here", values);
  const first = {
    first: place(here.ripensIn.place),
    firstWrap: speaker.say(`wrap.${here.ripensIn.wrap}`),
  };
  return speaker.say("why.hereRipe", { ...values, ...first });
}

/**
 * Why parts of a plan lie where they do, in full: neighbours, every other place and wrap that was simulated, and rules. `full`: with the cost of each
 * term by term.
 */
export function whyViews(
  context: HandoutContext,
  plan: Plan,
  reasons: readonly LotReason[],
  full: boolean,
): WhyView[] {
  const parts = lotNames(context, plan);
  const places = placeNames(context, plan);
  return reasons.map((reason) => {
    const kind = plan.lots.find(({ id }) => id === reason.part);
    const names = { lots: neighbourNames(context, plan, reason), places, kind };
    const told = {
      neighbours: neighbourLines(context, reason, names.lots),
      elsewhere: reason.elsewhere.map((rival) => rivalLine(context, rival, names, { what: "place", full })),
      wraps: reason.wraps.map((rival) => rivalLine(context, rival, names, { what: "wrap", full })),
      rules: ruleLines(context, reason, places),
    };
    return {
      part: reason.part,
      line: hereLine(context, reason, kind, parts.get(reason.part) ?? plainText(reason.part), places),
      ...told,
      reasons: [...told.neighbours, ...told.elsewhere, ...told.wraps, ...told.rules],
    };
  });
}
