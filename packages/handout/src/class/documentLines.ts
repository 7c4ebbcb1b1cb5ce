import type { Block, CardFace, ClassDocument } from "./classKit.js";

const faceLines = ({ title, lines }: CardFace): string[] => [title, ...lines];

/** Everything a block says, a line each, in the order in which it is read. */
export function blockLines(block: Block): string[] {
  switch (block.block) {
    case "heading":
    case "text":
      return [block.text];
    case "list":
      return [...block.items];
    case "pairs":
      return block.rows.map(({ name, text }) => `${name}: ${text}`);
    case "table":
      return [block.head, ...block.rows].map((row) => row.join(" | "));
    case "caution":
      return [...block.lines];
    case "cards":
      return block.cards.flatMap(({ front, back }) => [...faceLines(front), ...faceLines(back)]);
    case "choice":
      return [
        `${block.number}. ${block.question}`,
        ...block.choices.map((choice, index) => (index === block.answer ? (block.right ?? choice) : choice)),
        ...(block.why === undefined ? [] : [block.why]),
      ];
    case "sources":
      return [...(block.brief ?? []), ...block.sources].map(({ text }) => text);
    case "writing":
    case "page":
      return [];
  }
}

/** Everything a document says, a line each. */
export const documentLines = ({ title, subtitle, blocks, sources, brief = [] }: ClassDocument): string[] => [
  title,
  ...(subtitle === undefined ? [] : [subtitle]),
  ...blocks.flatMap(blockLines),
  ...brief.map(({ text }) => text),
  ...sources.map(({ text }) => text),
];
