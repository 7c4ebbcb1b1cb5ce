/** Words within a line that are in another language than the line: a title, a note of a record. */
export interface Passage {
  readonly text: string;
  /** BCP 47 tag. */
  readonly language: string;
}

/** A line, and the passages of it that are to be spoken in another language, in their order. */
export interface MarkedLine {
  readonly text: string;
  readonly passages?: readonly Passage[] | undefined;
}

/** Characters that no text holds once it is made plain: they carry a passage through a message. */
const [begin, middle, end] = ["\u0001", "\u0002", "\u0003"] as const;

const primary = (tag: string): string => tag.split("-")[0] ?? tag;

/** Marks words as being in a language, where the line they go into is in another. For values of messages only: `markedLine` takes the marks out. */
export const foreign = (tag: string, language: string, text: string): string =>
  primary(tag) === primary(language) || text === "" ? text : `${begin}${language}${middle}${text}${end}`;

const marks = new RegExp(`${begin}([^${middle}]*)${middle}([^${end}]*)${end}`, "gu");

/** A line as it is read, with the passages that were marked in it. */
export function markedLine(line: string): MarkedLine {
  const passages = [...line.matchAll(marks)].map(([, language = "", text = ""]) => ({ text, language }));
  const text = line.replace(marks, "$2");
  return passages.length > 0 ? { text, passages } : { text };
}

/** A piece of a line in one language; absent: the line's own. */
export interface LineRun {
  readonly text: string;
  readonly language?: string;
}

/** A line cut where its language changes, for whatever shows it. */
export function lineRuns({ text, passages = [] }: MarkedLine): LineRun[] {
  const runs: LineRun[] = [];
  let at = 0;
  for (const passage of passages) {
    const found = text.indexOf(passage.text, at);
    if (found < 0) continue;
    if (found > at) runs.push({ text: text.slice(at, found) });
    runs.push(passage);
    at = found + passage.text.length;
  }
  return at < text.length ? [...runs, { text: text.slice(at) }] : runs;
}
