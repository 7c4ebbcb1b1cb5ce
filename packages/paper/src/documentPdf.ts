import type { ClassDocument, PrintSize } from "@keepwright/handout";
import type { PaperSize } from "./sheetPdf.js";
import { type Typeset, typeset } from "./typeset.js";
import { typstPapers } from "./typstPapers.js";

export interface DocumentOptions {
  readonly paper: PaperSize;
  readonly print: PrintSize;
  /** BCP 47 tag. */
  readonly language: string;
  readonly sourcesHeading: string;
  /** A line at the end: what it was made for. */
  readonly kit: string;
  /** The words at the foot of a page, where there are several. */
  readonly pageWords: (page: number, pages: number) => string;
}

export interface DocumentPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Size of ordinary text [pt]. */
  readonly textSize: number;
}

/** Sizes of text [pt]. Large print is never below 18 pt; the others are declared preferences, no source: see the decision record on the class kit. */
export const documentSizes: Readonly<Record<PrintSize, number>> = { ordinary: 12, large: 18 };
/** Tried for what is to hang on a wall as one page, the largest that fits. */
const onePageSizes = [18, 17, 16, 15, 14, 13, 12, 11, 10];

type Set = (size: number, feet: readonly string[]) => Typeset;

const setter =
  (document: ClassDocument, options: DocumentOptions): Set =>
  (size, feet) =>
    typeset("typst/document.typ", {
      document: JSON.stringify(document),
      language: options.language,
      heading: options.sourcesHeading,
      kit: options.kit,
      paper: typstPapers[options.paper],
      size: String(size),
      large: String(options.print === "large"),
      feet: JSON.stringify(feet),
    });

/** A summary on one page is set as large as the page allows; all else in the size of the print. */
function sizeFor(document: ClassDocument, { print }: DocumentOptions, set: Set): number {
  if (document.sort !== "places" || print === "large") return documentSizes[print];
  return onePageSizes.find((size) => set(size, []).pages === 1) ?? documentSizes[print];
}

/** A document of a class kit as PDF/UA-1. Throws PaperError where a character cannot be printed, or for any warning of the typesetter. */
export function documentPdf(document: ClassDocument, options: DocumentOptions): DocumentPdf {
  const set = setter(document, options);
  const textSize = sizeFor(document, options, set);
  const first = set(textSize, []);
  if (first.pages === 1) return { bytes: first.pdf(), pages: 1, textSize };
  const feet = Array.from({ length: first.pages }, (_, page) => options.pageWords(page + 1, first.pages));
  const last = set(textSize, feet);
  return { bytes: last.pdf(), pages: last.pages, textSize };
}
