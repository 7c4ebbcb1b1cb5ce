import { isWholeYear } from "@keepwright/catalogue";
import { words } from "./words.mjs";

/** Spans of months in words: "June to November", or that it is all year. */
export function seasonWords(language, spans) {
  const own = words[language];
  if (isWholeYear(spans)) return own.allYear;
  return spans
    .map(([first, last]) =>
      first === last ? own.months[first - 1] : `${own.months[first - 1]} ${own.to} ${own.months[last - 1]}`,
    )
    .join(", ");
}
