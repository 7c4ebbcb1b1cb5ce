export const paperSizes = ["a4", "letter"] as const;
export type PaperSize = (typeof paperSizes)[number];

/** Typst's names of the papers. */
export const typstPapers: Readonly<Record<PaperSize, string>> = { a4: "a4", letter: "us-letter" };
