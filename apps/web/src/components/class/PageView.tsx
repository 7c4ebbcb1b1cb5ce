import type { ClassDocument } from "@keepwright/handout";
import type { ReactNode } from "react";
import { usePaperWords } from "../../words/paperWords.js";
import { useWords } from "../../words/words.js";
import { BlockView, SourcesView } from "./BlockView.js";

interface PageViewProps {
  readonly page: ClassDocument;
  /** Not on paper, since another page alone is printed. */
  readonly kept: boolean;
  readonly onPrint: () => void;
  readonly onSave: () => void;
  /** What became of the last file that was asked for here. */
  readonly children?: ReactNode;
}

/** One page of a class: to be looked at here, and printed alone or with the others. */
export function PageView({ page, kept, onPrint, onSave, children }: PageViewProps) {
  const say = useWords();
  const sayPaper = usePaperWords();
  const { title, subtitle, blocks, brief } = page;
  const sources = brief ?? page.sources;
  return (
    <article className={kept ? "class-page class-kept" : "class-page"} id={`class-${page.id}`}>
      <h3>{title}</h3>
      <p className="class-controls">
        <button type="button" onClick={onPrint}>
          {say("class.printOne", { title })}
        </button>{" "}
        <button type="button" onClick={onSave}>
          {sayPaper("paper.saveDocument", { title })}
        </button>
      </p>
      <div className="class-controls">{children}</div>
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
