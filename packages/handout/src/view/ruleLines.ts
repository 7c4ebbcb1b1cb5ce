import type { LotReason } from "@keepwright/planner";
import { plainText } from "../words/plainText.js";
import type { HandoutContext } from "./context.js";

type RuledOut = LotReason["ruledOut"][number];

/** The source of a rule, with a word where it was recalled and not read. */
function sourceWords({ speaker, catalogue }: HandoutContext, { evidence }: RuledOut): string | undefined {
  if (!evidence) return undefined;
  const citation = plainText(catalogue.sources.get(evidence.source)?.citation ?? evidence.source).replace(
    /\.$/,
    "",
  );
  return evidence.fromMemory ? speaker.say("why.rule.memory", { citation }) : citation;
}

/** Rules that a publication stands behind, where the catalogue names it. */
const isSourced = (rule: RuledOut["rule"]): rule is "cut out of refrigerator" | "does not stand in water" =>
  rule === "cut out of refrigerator" || rule === "does not stand in water";

function ruleLine(context: HandoutContext, ruled: RuledOut, things: string): string {
  const { say } = context.speaker;
  const source = sourceWords(context, ruled);
  return source !== undefined && isSourced(ruled.rule)
    ? say(`why.rule.${ruled.rule}.sourced`, { things, source })
    : say(`why.rule.${ruled.rule}`, { things });
}

/** What hard rules leave out, each rule in a line, with its source or that it is common practice. */
export function ruleLines(
  context: HandoutContext,
  { ruledOut }: LotReason,
  places: ReadonlyMap<string, string>,
): string[] {
  const { speaker } = context;
  const thing = ({ place, wrap }: RuledOut): string =>
    place === undefined
      ? speaker.say(`wrap.${wrap ?? "none"}`)
      : speaker.say("place.quoted", { place: places.get(place) ?? plainText(place) });
  const rules = [...new Set(ruledOut.map(({ rule }) => rule))];
  return rules.map((rule) => {
    const all = ruledOut.filter((one) => one.rule === rule);
    return ruleLine(context, all[0]!, speaker.choices(all.map(thing)));
  });
}
