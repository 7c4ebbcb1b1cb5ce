import { type Catalogue, kindNames } from "@keepwright/catalogue";
import type { LanguageKey } from "./language.js";
import type { readLines } from "./readLines.js";

/** What reads a line, as it comes with the figures. */
interface Reader {
  readonly catalogue: Catalogue | undefined;
  readonly read: typeof readLines | undefined;
}

/** Words that the reader surely takes for this kind: its usual name where that will do, else another of its names. */
export function wordsForKind(id: string, language: LanguageKey, { catalogue, read }: Reader): string {
  const names = kindNames().get(id)?.names;
  if (!names) return id;
  const other = language === "en" ? "es" : "en";
  const own = [names[language], names[other]].flatMap(({ many, one, also }) => [many, one, ...also]);
  const sure = (words: string): boolean => {
    if (!catalogue || !read) return true;
    const [line, more] = read(words, {}, catalogue);
    return !more && line?.kind === "lot" && line.lot.commodity === id && line.item.questions.length === 0;
  };
  return own.find(sure) ?? names[language].many;
}

/** The text with a line more at its end. */
export const withLine = (text: string, line: string): string =>
  text.trim() === "" ? line : `${text.replace(/\s+$/, "")}\n${line}`;
