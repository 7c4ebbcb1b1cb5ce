import type { Plan } from "@keepwright/planner";
import { wholeList } from "../briefSources.js";
import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument } from "../classKit.js";
import { kitSources, namedEvidence, shortSources } from "../kitSources.js";
import { careMyths } from "./careMyths.js";
import { coldMyths } from "./coldMyths.js";
import { gasMyths } from "./gasMyths.js";
import type { Myth } from "./myth.js";
import { safetyMyths } from "./safetyMyths.js";

/** Every saying there is, in the order in which they are told. */
export const allMyths: readonly Myth[] = [...safetyMyths, ...coldMyths, ...gasMyths, ...careMyths];

const cold = ["refrigerator shelf", "refrigerator door", "crisper drawer"];

/** Kinds that a plan has in the cold at any time. */
export const coldIn = (plan: Plan | undefined): ReadonlySet<string> =>
  new Set(
    plan?.lots
      .filter(({ stays }) => stays.some(({ placeKind }) => cold.includes(placeKind)))
      .map(({ commodity }) => commodity),
  );

/** Those that bear on the kit's kinds and topics, with the kinds; none against the cold of a kind that the plan has there. */
export function mythsFor(
  context: ClassContext,
  plan?: Plan,
): { readonly myth: Myth; readonly about: readonly string[] }[] {
  const inCold = coldIn(plan);
  return allMyths
    .filter(({ topics }) => topics.some((topic) => context.request.topics.includes(topic)))
    .map((myth) => ({
      myth,
      about: myth.about(context).filter((id) => !(myth.againstCold && inCold.has(id))),
    }))
    .filter(({ about }) => about.length > 0);
}

function mythBlocks(context: ClassContext, myth: Myth, about: readonly string[]): Block[] {
  const { say } = context;
  const told = myth.tell(context, about);
  const evidence = myth.evidence(context, about);
  const named = evidence.map((one) => namedEvidence(context, say("myths.figure"), one));
  return [
    { block: "heading", text: say("myths.said", { said: told.said }) },
    { block: "text", text: say("myths.true", { text: told.true }) },
    { block: "text", text: say("myths.why", { text: told.why }) },
    { block: "sources", sources: kitSources(context, named), brief: shortSources(context, named) },
  ];
}

/** Sayings that the evidence does not bear out, each with its source beside it. */
export function mythsDocument(context: ClassContext, plan?: Plan): ClassDocument {
  const { say, handout } = context;
  const told = mythsFor(context, plan);
  const about = new Set(told.flatMap((one) => one.about));
  return {
    id: "myths",
    sort: "myths",
    reader: "group",
    title: say("myths.title"),
    subtitle: say("myths.subtitle"),
    blocks: [
      { block: "text", text: say(told.length > 0 ? "myths.intro" : "myths.none") },
      ...told.flatMap((one) => mythBlocks(context, one.myth, one.about)),
      { block: "caution", lines: [handout.speaker.say("caution.local")] },
    ],
    sources: [],
    brief: [wholeList(context)],
    items: context.items.filter((id) => about.has(id)),
  };
}
