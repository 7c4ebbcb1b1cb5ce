import type { ClassDocument } from "@keepwright/handout";
import { useWords } from "../../words/words.js";
import { BlockView, SourcesView } from "./BlockView.js";

interface PageViewProps {
  readonly page: ClassDocument;
  /** Not on paper, since another page alone is printed. */
  readonly kept: boolean;
  readonly onPrint: () => void;
}

/** One page of a class: to be looked at here, and printed alone or with the others. */
export function PageView({ page, kept, onPrint }: PageViewProps) {
  const say = useWords();
  const { title, subtitle, blocks, sources } = page;
  return (
    <article className={kept ? "class-page class-kept" : "class-page"} id={`class-${page.id}`}>
      <h3>{title}</h3>
      <p className="class-controls">
        <button type="button" onClick={onPrint}>
          {say("class.printOne", { title })}
        </button>
      </p>
      {subtitle !== undefined && <p className="soft">{subtitle}</p>}
      {blocks.map((block, index) => (
        <BlockView key={index} block={block} />
      ))}
      {sources.length > 0 && (
        <>
          <h4>{say("class.sources")}</h4>
          <SourcesView sources={sources} />
        </>
      )}
    </article>
  );
}
