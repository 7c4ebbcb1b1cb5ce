import type { Typeset } from "./typesetter.js";

/** The words at the foot of a page, where there are several. */
export type PageWords = (page: number, pages: number) => string;

export interface SetPages {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** A page as PDF; where it takes several, it is set again by `again` with the words at the foot of each. */
export function numbered(
  first: Typeset,
  pageWords: PageWords,
  again: (feet: readonly string[]) => Typeset,
): SetPages {
  if (first.pages === 1) return { bytes: first.pdf(), pages: 1 };
  const last = again(Array.from({ length: first.pages }, (_, page) => pageWords(page + 1, first.pages)));
  return { bytes: last.pdf(), pages: last.pages };
}
