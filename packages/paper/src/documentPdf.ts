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
  /** A line below the title: what it was made for. */
  readonly kit: string;
  /** The words at the foot of a page, where there are several. */
  readonly pageWords: (page: number, pages: number) => string;
}

export interface DocumentPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
}

/** Sizes of text [pt]. Large print is never below 18 pt; ordinary is a declared preference, no source: see docs/decisions on the class kit. */
export const documentSizes: Readonly<Record<PrintSize, number>> = { ordinary: 12, large: 18 };

/** A document of a class kit as PDF/UA-1. Throws PaperError where a character cannot be printed, or for any warning of the typesetter. */
export function documentPdf(document: ClassDocument, options: DocumentOptions): DocumentPdf {
  const set = (feet: readonly string[]): Typeset =>
    typeset("typst/document.typ", {
      document: JSON.stringify(document),
      language: options.language,
      heading: options.sourcesHeading,
      kit: options.kit,
      paper: typstPapers[options.paper],
      size: String(documentSizes[options.print]),
      large: String(options.print === "large"),
      feet: JSON.stringify(feet),
    });
  const first = set([]);
  if (first.pages === 1) return { bytes: first.pdf(), pages: 1 };
  const feet = Array.from({ length: first.pages }, (_, page) => options.pageWords(page + 1, first.pages));
  const last = set(feet);
  return { bytes: last.pdf(), pages: last.pages };
}
