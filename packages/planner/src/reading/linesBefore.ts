import type { Catalogue } from "@keepwright/catalogue";
import type { FoundName } from "./elements.js";
import type { SpellingGuesses } from "./names.js";
import type { NotUnderstood, UnderstoodLot } from "./reading.js";

type Item = UnderstoodLot | NotUnderstood;

interface LineBefore {
  readonly start: number;
  readonly items: readonly Item[];
  /** What its spelling was looked up for: it counts again when the line is taken again. */
  readonly asked: ReadonlyMap<string, FoundName | undefined>;
}

/** Lines kept from one reading to the next: while a text is typed, all its lines but one stay as they are. */
const kept = new WeakMap<Catalogue, Map<string, LineBefore>>();
/** So many are kept [1]; then all are let go, which costs one reading. */
const mostLines = 500;
/** Longest line that is kept [UTF-16 units]: what is longer is no line of a list, and the text before it tells. */
const longestKept = 200;

/** What a line was read as before, where it now stands; the very same items where it stands where it stood. */
export function lineBefore(
  catalogue: Catalogue,
  line: string,
  start: number,
  guesses: SpellingGuesses,
): readonly Item[] | undefined {
  const before = kept.get(catalogue)?.get(line);
  if (!before || !guesses.askAgain(before.asked)) return undefined;
  const by = start - before.start;
  if (by === 0) return before.items;
  const items = before.items.map((item) => ({ ...item, from: item.from + by, to: item.to + by }));
  rememberLine(catalogue, line, { ...before, start, items });
  return items;
}

/** Keeps what a line was read as. */
export function rememberLine(catalogue: Catalogue, line: string, read: LineBefore): void {
  if (line.length > longestKept) return;
  const lines = kept.get(catalogue);
  if (!lines || lines.size >= mostLines) kept.set(catalogue, new Map([[line, read]]));
  else lines.set(line, read);
}
