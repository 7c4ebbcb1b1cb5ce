import type { ClassDocument, PrintSize } from "@keepwright/handout";
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
/** Tried for what is to hang on a wall as one page, the largest that fits. */
const onePageSizes = [18, 17, 16, 15, 14, 13, 12, 11, 10];

type Set = (size: number, feet: readonly string[]) => Typeset;

const setter =
  (typesetter: Typesetter, document: ClassDocument, options: DocumentOptions): Set =>
  (size, feet) =>
    typesetter.set("document.typ", {
      document: JSON.stringify(document),
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

/** A summary on one page is set as large as the page allows; all else in the size of the print. */
function fitted({ sort }: ClassDocument, { print }: DocumentOptions, set: Set): Fitted {
  const sizes = sort === "places" && print === "ordinary" ? onePageSizes : [];
  for (const textSize of sizes) {
    const first = set(textSize, []);
    if (first.pages === 1) return { textSize, first };
  }
  const textSize = documentSizes[print];
  return { textSize, first: set(textSize, []) };
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
