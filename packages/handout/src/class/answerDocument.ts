import { commodityOf, type Evidence, type KindGuidance } from "@keepwright/catalogue";
import { askedNamedSources } from "../view/askedSources.js";
import type { AskSection } from "../view/askTold.js";
import { type AskView, askNames, askView } from "../view/askView.js";
import { cautionLimits } from "../view/cautionLimits.js";
import { namedCautionLines } from "../view/cautions.js";
import { kitchenWords } from "../view/ordinaryNames.js";
import { BriefSources } from "./briefSources.js";
import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument } from "./classKit.js";
import { kitSources, namedEvidence } from "./kitSources.js";

/** What the advice of a part of the answer comes from; what is common practice has a star at its heading already. */
function basisOf(part: AskSection["part"], guidance: KindGuidance | undefined): Evidence[] {
  const basis = guidance?.basis;
  if (!basis) return [];
  const all = {
    apart: [],
    ripe: [basis.signs],
    going: [basis.signs],
    discard: [basis.signs],
    save: [basis.save, basis.trimmings],
    cautions: [basis.hazards],
    season: [],
  }[part];
  return all.flatMap((one) => (one && one.kind !== "common practice" ? [one] : []));
}

/** What the sheet tells of cautions in general, and the safety limits each of them stands on. */
function limitsByLine(context: ClassContext, id: string): ReadonlyMap<string, Evidence[]> {
  const { handout, catalogue } = context;
  const named = context.answer(id).cautions.flatMap((name) => {
    const limits = cautionLimits(catalogue, name);
    return namedCautionLines(handout, [name]).map((line) => [line, limits] as const);
  });
  return new Map(named);
}

function markedLines(
  context: ClassContext,
  brief: BriefSources,
  id: string,
  { part, lines }: AskSection,
): string[] {
  const limits = limitsByLine(context, id);
  const basis = basisOf(part, context.guidance.get(id));
  return lines.map((line) => brief.markedFigure(line, limits.get(line) ?? basis));
}

/** How long, with where that comes from; then what ends it, and when it is ready. */
function factBlocks(context: ClassContext, brief: BriefSources, id: string, view: AskView): Block[] {
  const { say, catalogue } = context;
  const { storage, ripening } = commodityOf(catalogue, id);
  const { readyOnDay } = context.answer(id).belongs;
  const until = brief.marked(view.until, [storage.life], "life");
  const [ends = "", ...ready] = view.ends;
  const waits = ripening !== undefined && readyOnDay !== null && readyOnDay > 0;
  return [
    {
      block: "pairs",
      rows: [
        { name: say("answer.where"), text: view.where },
        { name: say("answer.how"), text: view.how },
        { name: say("answer.until"), text: until },
      ],
    },
    {
      block: "list",
      mark: "dot",
      items: [
        ends,
        ...ready.map((line) => (waits ? brief.marked(line, [ripening.daysToRipe]) : line)),
        say("answer.range"),
      ],
    },
  ];
}

/** Most other names on a sheet: the catalogue has many more, to be searched by. A declared preference, no source. */
const mostNames = 3;

/** The answer sheet of one kind: the very answer that is given to whoever asks about it, with few sources: all of them stand on the host's paper. */
export function answerDocument(context: ClassContext, id: string): ClassDocument {
  const { handout, say, catalogue, guidance } = context;
  const view = askView(handout, context.answer(id), guidance.get(id));
  const { title, alsoCalled } = askNames(handout, id, mostNames);
  const brief = new BriefSources(context);
  const facts = factBlocks(context, brief, id, view);
  const first: Block[] =
    view.first.length > 0
      ? [
          { block: "heading", text: say("answer.first") },
          { block: "list", mark: "tick", items: view.first },
        ]
      : [];
  const sections = view.sections.flatMap((section): Block[] => {
    const lines = markedLines(context, brief, id, section);
    // Told in one line: it is the least of the sheet, and under a heading of its own it took more room than it is worth.
    if (section.part === "season")
      return [
        { block: "text", text: say("answer.season", { season: section.heading, months: lines.join(" ") }) },
      ];
    return [
      { block: "heading", text: section.heading },
      section.part === "cautions"
        ? { block: "caution", lines }
        : { block: "list", mark: "dot", items: lines },
    ];
  });
  const kitchenLine = say("answer.kitchen", { kitchen: kitchenWords(handout, context.kitchen.name) });
  const limits = context.answer(id).cautions.flatMap((name) => cautionLimits(catalogue, name));
  return {
    id: `answer-${id}`,
    sort: "answer",
    reader: "group",
    title,
    subtitle: alsoCalled,
    blocks: [
      ...facts,
      ...first,
      ...sections,
      { block: "text", text: [...(view.note === undefined ? [] : [view.note]), kitchenLine].join(" ") },
    ],
    sources: kitSources(context, [
      ...askedNamedSources(handout, catalogue, id, guidance.get(id)),
      ...limits.map((limit) => namedEvidence(context, say("sources.limits"), limit)),
    ]),
    brief: brief.lines(),
    items: [id],
  };
}
