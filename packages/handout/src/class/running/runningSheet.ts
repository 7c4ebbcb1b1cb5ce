import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument, DocumentSort } from "../classKit.js";
import type { DeckPart } from "../slides/deck.js";
import { type HeldPart, heldParts } from "./heldParts.js";
import { bringNames, type ClassPart } from "./parts.js";

/** "Slide 2", "slides 3 to 7"; nothing where there are no slides. */
function slidesOf({ say }: ClassContext, part: HeldPart, slides: readonly DeckPart[]): string[] {
  const own = slides.find(({ name }) => name === part.name);
  if (!own) return [];
  const { first, last } = own;
  return [first === last ? say("running.slide", { first }) : say("running.slides", { first, last })];
}

/** Names of the papers that are there for a part, and the numbers of its slides. */
const papersOf = (
  context: ClassContext,
  part: HeldPart,
  there: ReadonlySet<DocumentSort>,
  slides: readonly DeckPart[],
): string =>
  [
    ...part.papers.filter((sort) => there.has(sort)).map((sort) => context.say(`running.paper.${sort}`)),
    ...slidesOf(context, part, slides),
  ].join(", ");

function partRows(
  context: ClassContext,
  held: readonly HeldPart[],
  there: ReadonlySet<DocumentSort>,
  slides: readonly DeckPart[],
): string[][] {
  let at = 0;
  return held.map((part) => {
    const from = at;
    at += part.minutes;
    return [
      context.say("running.minutes", { from, to: at }),
      context.say(`running.part.${part.name}`),
      context.say(`running.do.${part.name}`),
      papersOf(context, part, there, slides) || context.say("running.nothing"),
    ];
  });
}

/** What there is no time for; nothing where there is time for all. */
function droppedBlocks({ say, request }: ClassContext, dropped: readonly ClassPart[]): Block[] {
  if (dropped.length === 0) return [];
  return [
    { block: "heading", text: say("running.dropped") },
    { block: "text", text: say("running.droppedWhy", { minutes: request.minutes }) },
    { block: "list", mark: "dot", items: dropped.map(({ name }) => say(`running.part.${name}`)) },
  ];
}

/**
 * What the host does, minute by minute, and what to bring. The parts add up to the minutes of the class.
 * @param slides of each part; left out where there are none
 */
export function runningSheet(
  context: ClassContext,
  documents: readonly ClassDocument[],
  slides: readonly DeckPart[] = [],
): ClassDocument {
  const { say, handout, request, items } = context;
  const { speaker } = handout;
  const { held, dropped } = heldParts(request.minutes, request.topics);
  const there = new Set(documents.map(({ sort }) => sort));
  const wanted = new Set([
    ...held.flatMap(({ bring }) => bring),
    ...(slides.length > 0 ? (["screen"] as const) : []),
  ]);
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
        head: [
          say("running.when"),
          say("running.part"),
          say("running.do"),
          say(slides.length > 0 ? "running.papersAndSlides" : "running.papers"),
        ],
        rows: partRows(context, held, there, slides),
      },
      ...droppedBlocks(context, dropped),
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
