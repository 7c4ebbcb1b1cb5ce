import { type Splice, spliceBetween } from "./patch.js";

const endOf = ({ start, removed }: Splice): number => start + removed.length;

const spliced = (text: string, { start, removed, inserted }: Splice): string =>
  text.slice(0, start) + inserted + text.slice(start + removed.length);

/** Both put something in at the same place: whole lines come before what is there, a line that is begun comes after it. */
function bothAt(own: string, other: string): string {
  if (other.endsWith("\n")) return other + own;
  if (own.endsWith("\n")) return own + other;
  if (own.startsWith("\n")) return other + own;
  if (other.startsWith("\n")) return own + other;
  return `${other}\n${own}`;
}

/**
 * A text with what was changed in it here and elsewhere at the same time, since both were `from`; nothing where both changed the same stretch. What
 * both put in at one place stands on lines of its own.
 */
export function mergedText(from: string, own: string, elsewhere: string): string | undefined {
  const mine = spliceBetween(from, own);
  const other = spliceBetween(from, elsewhere);
  if (!mine || !other) return mine ? own : elsewhere;
  const bothPutIn = mine.removed === "" && other.removed === "";
  // A new line in each is two, any other letter at the same place is the same one.
  if (own === elsewhere && !mine.inserted.startsWith("\n")) return own;
  if (bothPutIn && mine.start === other.start)
    return spliced(from, { ...mine, inserted: bothAt(mine.inserted, other.inserted) });
  if (endOf(mine) <= other.start) return spliced(elsewhere, mine);
  if (endOf(other) > mine.start) return undefined;
  const further = other.inserted.length - other.removed.length;
  return spliced(elsewhere, { ...mine, start: mine.start + further });
}

/** Where a place in a text is once the text was changed elsewhere: beside the same letters as before. */
export function movedPlace(place: number, before: string, after: string): number {
  const other = spliceBetween(before, after);
  if (!other || place < other.start) return place;
  if (place === other.start && !/^[^\n].*\n$/s.test(other.inserted)) return place;
  if (place >= endOf(other)) return place + other.inserted.length - other.removed.length;
  return other.start + other.inserted.length;
}
