import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument, DocumentSort } from "../classKit.js";
import { type HeldPart, heldParts } from "./heldParts.js";
import { bringNames } from "./parts.js";

/** Names of the papers that are there, for a part. */
const papersOf = ({ say }: ClassContext, part: HeldPart, there: ReadonlySet<DocumentSort>): string =>
  part.papers
    .filter((sort) => there.has(sort))
    .map((sort) => say(`running.paper.${sort}`))
    .join(", ");

function partRows(
  context: ClassContext,
  held: readonly HeldPart[],
  there: ReadonlySet<DocumentSort>,
): string[][] {
  let at = 0;
  return held.map((part) => {
    const from = at;
    at += part.minutes;
    return [
      context.say("running.minutes", { from, to: at }),
      context.say(`running.part.${part.name}`),
      context.say(`running.do.${part.name}`),
      papersOf(context, part, there) || context.say("running.nothing"),
    ];
  });
}

/** What the host does, minute by minute, and what to bring. The parts add up to the minutes of the class. */
export function runningSheet(context: ClassContext, documents: readonly ClassDocument[]): ClassDocument {
  const { say, handout, request, items } = context;
  const { speaker } = handout;
  const { held, dropped } = heldParts(request.minutes, request.topics);
  const there = new Set(documents.map(({ sort }) => sort));
  const wanted = new Set(held.flatMap(({ bring }) => bring));
  const left = dropped.map(({ name }) => say(`running.part.${name}`));
  const short: Block[] =
    left.length > 0
      ? [
          { block: "heading", text: say("running.dropped") },
          { block: "text", text: say("running.droppedWhy", { minutes: request.minutes }) },
          { block: "list", mark: "dot", items: left },
        ]
      : [];
  return {
    id: "running-sheet",
    sort: "running sheet",
    reader: "host",
    title: say("running.title"),
    subtitle: say("running.subtitle", { minutes: request.minutes }),
    blocks: [
      { block: "text", text: say("running.about", { names: speaker.list(items.map(context.name)) }) },
      // Before the parts: whoever reads it at the end has handed round food already.
      { block: "caution", lines: [say("running.allergies")] },
      { block: "heading", text: say("running.bring") },
      {
        block: "list",
        mark: "tick",
        items: [
          say("running.print"),
          ...bringNames.filter((name) => wanted.has(name)).map((name) => say(`running.bring.${name}`)),
        ],
      },
      { block: "heading", text: say("running.parts") },
      {
        block: "table",
        head: [say("running.when"), say("running.part"), say("running.do"), say("running.papers")],
        rows: partRows(context, held, there),
      },
      ...short,
      {
        block: "caution",
        lines: [
          speaker.say("caution.wash"),
          speaker.say("caution.cut-produce"),
          speaker.say("caution.local"),
        ],
      },
    ],
    sources: [{ text: say("running.source"), standing: "inferred" }],
    items,
  };
}
