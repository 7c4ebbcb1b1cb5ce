import { type Catalogue, kindNames, namesFor } from "@keepwright/catalogue";
import type { readLines } from "./readLines.js";

/** What reads a line, as it comes with the figures. */
interface Reader {
  readonly catalogue: Catalogue | undefined;
  readonly read: typeof readLines | undefined;
}

/** Words that the reader surely takes for this kind: its usual name where that will do, else another of its names. */
export function wordsForKind(id: string, tag: string, { catalogue, read }: Reader): string {
  const kind = kindNames().get(id);
  if (!kind) return id;
  const shown = namesFor(kind, tag);
  const { es, en } = kind.names;
  const own = [shown, ...(tag.startsWith("es") ? [es, en] : [en, es])].flatMap(({ many, one, also }) => [
    many,
    one,
    ...also,
  ]);
  const sure = (words: string): boolean => {
    if (!catalogue || !read) return true;
    const [line, more] = read(words, {}, catalogue);
    return !more && line?.kind === "lot" && line.lot.commodity === id && line.item.questions.length === 0;
  };
  return own.find(sure) ?? shown.many;
}

/** The text with a line more at its end. */
export const withLine = (text: string, line: string): string =>
  text.trim() === "" ? line : `${text.replace(/\s+$/, "")}\n${line}`;
