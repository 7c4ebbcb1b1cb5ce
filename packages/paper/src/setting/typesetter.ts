/** Pages that can be set: their files in `typst`. */
export const templates = ["sheet.typ", "document.typ", "labels.typ"] as const;
export type Template = (typeof templates)[number];

/** Every file that a typesetter needs beside what is told, by name: what pages are set from, and the fonts they are set in. */
export const typstFiles = [...templates, "drawings.typ"] as const;
export const fontFiles = ["Andika-Regular.ttf", "Andika-Bold.ttf"] as const;

/** What a page is set from: data only. Nothing in it is ever read as markup. */
export type PaperInputs = Readonly<Record<string, string>>;

export interface Typeset {
  readonly pages: number;
  /** The bytes of the PDF, in PDF/UA-1; the same for the same inputs wherever it is made. */
  pdf(): Uint8Array;
}

/** Sets pages: in Node by a native module, in a browser by WebAssembly. */
export interface Typesetter {
  /** The letters there are to print with. */
  readonly letters: Letters;
  /** Sets a page from its inputs. Throws PaperError for any error and any warning, such as a font that is not there. */
  set(template: Template, inputs: PaperInputs): Typeset;
}

/** What the fonts can print, and how wide it is. */
export interface Letters {
  /** Characters of a text that cannot be printed, each once. */
  missingFrom(text: string): readonly string[];
  /** Width of a line of text in the unit of its size. */
  width(text: string, size: number, bold: boolean): number;
}
