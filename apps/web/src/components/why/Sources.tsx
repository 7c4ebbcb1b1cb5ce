import { loadSourced } from "@keepwright/catalogue";
import { type HandoutContext, kindSourceLines, type MarkedLine } from "@keepwright/handout";
import { useState } from "react";
import { useWords } from "../../words/words.js";
import { MarkedText } from "../MarkedText.js";

interface SourcesProps {
  readonly commodity: string;
  /** What else there is to tell once the sources are there, before those of the kind. */
  readonly more?: (context: HandoutContext) => readonly string[];
  readonly context: HandoutContext;
  readonly heading: string;
}

/** Where the figures of the kind come from; fetched when it is first opened. */
export function Sources({ commodity, more, context, heading }: SourcesProps) {
  const say = useWords();
  const [lines, setLines] = useState<readonly MarkedLine[] | "failed" | undefined>();
  const open = () => {
    if (lines !== undefined && lines !== "failed") return;
    loadSourced().then(
      (catalogue) => {
        const sourced = { ...context, catalogue };
        setLines([
          ...(more?.(sourced) ?? []).map((text) => ({ text })),
          ...kindSourceLines(sourced, commodity),
        ]);
      },
      () => setLines("failed"),
    );
  };
  return (
    <details onToggle={(event) => event.currentTarget.open && open()}>
      <summary>{heading}</summary>
      {lines === "failed" ? (
        <p role="alert">{say("why.noSources")}</p>
      ) : lines === undefined ? (
        <p role="status">{say("screen.opening")}</p>
      ) : (
        <ul>
          {lines.map((line) => (
            <li key={line.text}>
              <MarkedText line={line} />
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}
