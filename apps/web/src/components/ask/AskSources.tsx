import { type KindGuidance, loadSourced } from "@keepwright/catalogue";
import { askedSources, type HandoutContext, type MarkedLine } from "@keepwright/handout";
import { useEffect, useState } from "react";
import { useWords } from "../../words/words.js";
import { MarkedText } from "../MarkedText.js";

interface AskSourcesProps {
  readonly id: string;
  readonly context: HandoutContext;
  readonly guidance: KindGuidance | undefined;
}

/** Where every figure and every advice comes from; its part of the catalogue is loaded when it is first opened. */
export function AskSources(props: AskSourcesProps) {
  const say = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details className="ask-sources" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say("ask.sources")}</summary>
      {open && <SourceList {...props} />}
    </details>
  );
}

function SourceList({ id, context, guidance }: AskSourcesProps) {
  const say = useWords();
  const [lines, setLines] = useState<readonly MarkedLine[] | "failed">();
  useEffect(() => {
    let wanted = true;
    loadSourced().then(
      (catalogue) => wanted && setLines(askedSources(context, catalogue, id, guidance)),
      () => wanted && setLines("failed"),
    );
    return () => {
      wanted = false;
    };
  }, [id, context, guidance]);
  if (lines === "failed") return <p role="alert">{say("ask.sourcesFailed")}</p>;
  if (lines === undefined) return <p role="status">{say("screen.opening")}</p>;
  return (
    <ul>
      {lines.map((line) => (
        <li key={line.text}>
          <MarkedText line={line} />
        </li>
      ))}
    </ul>
  );
}
