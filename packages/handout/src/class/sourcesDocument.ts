import type { ClassContext } from "./classContext.js";
import type { Block, ClassDocument, KitSource } from "./classKit.js";

/** All sources of a paper, also those that stand within it. */
const allSources = ({ blocks, sources }: ClassDocument): KitSource[] => [
  ...blocks.flatMap((block) => (block.block === "sources" ? block.sources : [])),
  ...sources,
];

/** What stands above the sources within a paper: the heading they belong to, where there are any. */
function sourceBlocks({ title, blocks, sources }: ClassDocument): Block[] {
  const within = blocks.flatMap((block, index): Block[] => {
    if (block.block !== "sources") return [];
    const above = blocks.slice(0, index).findLast((one) => one.block === "heading");
    const named: Block[] = above?.block === "heading" ? [{ block: "text", text: above.text }] : [];
    return [...named, { block: "sources", sources: block.sources }];
  });
  const after: Block[] = sources.length > 0 ? [{ block: "sources", sources }] : [];
  return [{ block: "heading", text: title }, ...within, ...after];
}

/** Every source of those papers that name only a few themselves, in full: the host's own paper. */
export function sourcesDocument(context: ClassContext, documents: readonly ClassDocument[]): ClassDocument {
  const { say, handout, items } = context;
  const brief = documents.filter((one) => one.brief !== undefined && allSources(one).length > 0);
  return {
    id: "sources",
    sort: "sources",
    reader: "host",
    title: say("sources.title"),
    subtitle: say("kit.host"),
    blocks: [
      { block: "text", text: say("sources.intro") },
      ...brief.flatMap(sourceBlocks),
      { block: "caution", lines: [handout.speaker.say("caution.local")] },
    ],
    sources: [],
    items,
  };
}
