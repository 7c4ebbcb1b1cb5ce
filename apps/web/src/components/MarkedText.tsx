import { lineRuns, type MarkedLine } from "@keepwright/handout";

/** A line whose passages in another language say so, to whatever speaks them. */
export function MarkedText({ line }: { readonly line: MarkedLine }) {
  return lineRuns(line).map(({ text, language }, index) =>
    language === undefined ? (
      text
    ) : (
      <span key={index} lang={language}>
        {text}
      </span>
    ),
  );
}
