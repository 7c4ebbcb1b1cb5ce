import type { Block, ClassDocument } from "@keepwright/handout";

const whole = (text: string): string => {
  const bare = text.replace(/ \*$/, "");
  return /[.!?:»”]$/.test(bare) ? bare : `${bare}.`;
};

/** What a reader reads of a block, whole sentences; names of publications are left out: they are as they are. */
export function sentencesOf(block: Block): string[] {
  switch (block.block) {
    case "heading":
    case "text":
      return [whole(block.text)];
    case "list":
      return block.items.map(whole);
    case "pairs":
      return block.rows.map(({ name, text }) => whole(`${name}: ${text}`));
    case "table":
      return [...block.head, ...block.rows.flat()].map(whole);
    case "caution":
      return block.lines.map(whole);
    case "cards":
      return block.cards.flatMap(({ front, back }) =>
        [front, back].flatMap(({ title, lines }) => [title, ...lines].map(whole)),
      );
    case "choice":
      return [block.question, ...block.choices, ...(block.why === undefined ? [] : [block.why])].map(whole);
    case "sources":
    case "writing":
    case "page":
      return [];
  }
}

/** All that is read of a document, its sources aside. */
export const documentSentences = ({ title, subtitle, blocks }: ClassDocument): string[] => [
  whole(title),
  ...(subtitle === undefined ? [] : [whole(subtitle)]),
  ...blocks.flatMap(sentencesOf),
];
