import { type ClassDocument, lineRuns, type MarkedLine, type PrintSize } from "@keepwright/handout";
import { numbered, type PageWords, type SetPages } from "./numbered.js";
import { type PaperSize, typstPapers } from "./paperSizes.js";
import { mustBePrintable } from "./printable.js";
import type { Typeset, Typesetter } from "./typesetter.js";

export interface DocumentOptions {
  readonly paper: PaperSize;
  readonly print: PrintSize;
  /** BCP 47 tag. */
  readonly language: string;
  readonly sourcesHeading: string;
  /** A line at the end: what it was made for. */
  readonly kit: string;
  readonly pageWords: PageWords;
}

export interface DocumentPdf extends SetPages {
  /** Size of ordinary text [pt]. */
  readonly textSize: number;
}

/** Sizes of text [pt]. Large print is never below 18 pt; the others are declared preferences, no source: see the decision record on the class kit. */
export const documentSizes: Readonly<Record<PrintSize, number>> = { ordinary: 12, large: 18 };
/** Tried for what is to be one page: what hangs on a wall, in the largest that fits, and what is taken home. */
const onePageSizes: Readonly<Partial<Record<ClassDocument["sort"], readonly number[]>>> = {
  places: [18, 17, 16, 15, 14, 13, 12, 11, 10],
  answer: [12, 11.5, 11, 10.5, 10],
  household: [12, 11.5, 11, 10.5, 10],
};
/** Tried for all else, where a little smaller spares a page with next to nothing on it. */
const sparingSizes: readonly number[] = [11.5, 11];

/** Sources as they stand on the page: each in runs of one language. */
const runsOf = (lines: readonly MarkedLine[]) => lines.map(lineRuns);

/** A document as the template takes it. */
const shown = ({ sort, title, subtitle, blocks, sources, brief }: ClassDocument) => ({
  sort,
  title,
  ...(subtitle !== undefined && { subtitle }),
  blocks: blocks.map((block) =>
    block.block === "sources" ? { block: "sources", sources: runsOf(block.brief ?? block.sources) } : block,
  ),
  sources: brief === undefined ? runsOf(sources) : [],
  brief: runsOf(brief ?? []),
});

type Set = (size: number, feet: readonly string[]) => Typeset;

const setter =
  (typesetter: Typesetter, document: ClassDocument, options: DocumentOptions): Set =>
  (size, feet) =>
    typesetter.set("document.typ", {
      document: JSON.stringify(shown(document)),
      language: options.language,
      heading: options.sourcesHeading,
      kit: options.kit,
      paper: typstPapers[options.paper],
      size: String(size),
      large: String(options.print === "large"),
      feet: JSON.stringify(feet),
    });

interface Fitted {
  readonly textSize: number;
  readonly first: Typeset;
}

/** What is to be one page is set as large as the page allows; all else in the size of the print, or a little smaller where that spares a page. */
function fitted({ sort }: ClassDocument, { print }: DocumentOptions, set: Set): Fitted {
  const sizes = print === "ordinary" ? (onePageSizes[sort] ?? []) : [];
  for (const textSize of sizes) {
    const first = set(textSize, []);
    if (first.pages === 1) return { textSize, first };
  }
  const usual = { textSize: documentSizes[print], first: set(documentSizes[print], []) };
  if (print === "large" || usual.first.pages === 1) return usual;
  for (const textSize of sparingSizes) {
    const first = set(textSize, []);
    if (first.pages < usual.first.pages) return { textSize, first };
  }
  return usual;
}

/** A document of a class kit as PDF/UA-1. Throws PaperError where a character cannot be printed, or for any warning of the typesetter. */
export function setDocument(
  typesetter: Typesetter,
  document: ClassDocument,
  options: DocumentOptions,
): DocumentPdf {
  mustBePrintable(typesetter.letters, [document, options.kit]);
  const set = setter(typesetter, document, options);
  const { textSize, first } = fitted(document, options, set);
  return { ...numbered(first, options.pageWords, (feet) => set(textSize, feet)), textSize };
}
