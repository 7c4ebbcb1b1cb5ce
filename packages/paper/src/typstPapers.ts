import type { PaperSize } from "./sheetPdf.js";

/** Typst's names of the papers. */
export const typstPapers: Readonly<Record<PaperSize, string>> = { a4: "a4", letter: "us-letter" };
