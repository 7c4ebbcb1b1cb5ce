import type { ClassContext } from "../classContext.js";
import type { Block, ClassDocument } from "../classKit.js";
import { choiceLetters } from "../quiz/question.js";
import type { DeckSlide, SlidePart } from "./deck.js";

/** A block as it stands on a slide; nothing of what is only for paper. */
function partsOf(block: Block): SlidePart[] {
  switch (block.block) {
    case "heading":
    case "text":
      return [{ part: block.block, text: block.text }];
    case "list":
      return [{ part: "list", mark: "dot", items: block.items }];
    case "pairs":
      return [{ part: "pairs", rows: block.rows }];
    case "caution":
      return [{ part: "caution", lines: block.lines }];
    case "table":
      return [{ part: "table", head: block.head, rows: block.rows }];
    default:
      return [];
  }
}

const sourcesIn = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) =>
    "sources" in block ? (block.sources as readonly { readonly text: string }[]).map(({ text }) => text) : [],
  );

/** A document in parts, each with the heading above it; what stands before the first heading has the document's title. */
function parted({
  title,
  blocks,
}: ClassDocument): { readonly title: string; readonly blocks: readonly Block[] }[] {
  const parts: { title: string; blocks: Block[] }[] = [{ title, blocks: [] }];
  for (const block of blocks) {
    if (block.block === "heading") parts.push({ title: block.text, blocks: [] });
    else parts.at(-1)!.blocks.push(block);
  }
  return parts;
}

/** The slides of a document: one for each heading. */
export function headingSlides(printed: ClassDocument, notes: readonly string[]): DeckSlide[] {
  const shared = printed.sources.map(({ text }) => text);
  return parted(printed).flatMap(({ title, blocks }, at): DeckSlide[] => {
    const parts = blocks.flatMap(partsOf);
    if (parts.length === 0) return [];
    const sources = [...sourcesIn(blocks), ...shared];
    return [{ id: `${printed.id}-${at + 1}`, sort: "plain", title, parts, notes, sources }];
  });
}

/** The slides of a document that is read as a whole: its headings stand within. Its cautions stand on the last slide of every deck. */
export const wholeSlides = (printed: ClassDocument, notes: readonly string[]): DeckSlide[] => [
  {
    id: printed.id,
    sort: "plain",
    title: printed.title,
    parts: printed.blocks.filter(({ block }) => block !== "caution").flatMap(partsOf),
    notes,
    sources: [...sourcesIn(printed.blocks), ...printed.sources.map(({ text }) => text)],
  },
];

/** The sources of one question among those of all, which name the questions they are for. */
function sourcesFor({ say }: ClassContext, sources: readonly string[], number: number): string[] {
  // Names of questions hold letters, a space and a number, so they need no escaping.
  const named = new RegExp(`${say("quiz.figure", { number })}(?!\\d)`, "iu");
  return sources.filter((line) => named.test(line));
}

/** A slide for each question; which answer is right, and why, stands in its notes. */
export function questionSlides(context: ClassContext, printed: ClassDocument): DeckSlide[] {
  const { say } = context;
  const sources = printed.sources.map(({ text }) => text);
  return printed.blocks.flatMap((block): DeckSlide[] => {
    if (block.block !== "choice") return [];
    const { number, question, choices, answer, why } = block;
    const right = answer === undefined ? undefined : choices[answer];
    return [
      {
        id: `question-${number}`,
        sort: "plain",
        title: say("slides.quiz.title", { number }),
        subtitle: question,
        parts: [{ part: "list", mark: "letter", items: choices }],
        notes: [
          ...(right === undefined
            ? []
            : [say("slides.quiz.notes", { letter: choiceLetters[answer!]!, choice: right })]),
          ...(why === undefined ? [] : [why]),
        ],
        sources: sourcesFor(context, sources, number),
      },
    ];
  });
}
