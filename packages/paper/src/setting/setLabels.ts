import { type LabelRow, type LabelSheet, labelLayout, type PlacedLabel } from "@keepwright/handout";
import type { SetPages } from "./numbered.js";
import { mustBePrintable } from "./printable.js";
import type { Typesetter } from "./typesetter.js";

export interface LabelsOptions {
  readonly grid: LabelSheet;
  /** First free label of the first sheet, counted along the rows from 1. */
  readonly start: number;
  /** Draw the edges of the labels, to try on plain paper. */
  readonly outlines: boolean;
  readonly title: string;
  /** BCP 47 tag. */
  readonly language: string;
}

export interface LabelsPdf extends SetPages {
  /** Every label with its lines where they are printed. */
  readonly labels: readonly PlacedLabel[];
}

/** A sheet of labels as PDF/UA-1, in the page's own measures. Throws PaperError where a character cannot be printed, or for any warning of the typesetter. */
export function setLabels(
  typesetter: Typesetter,
  rows: readonly LabelRow[],
  { grid, start, outlines, title, language }: LabelsOptions,
): LabelsPdf {
  mustBePrintable(typesetter.letters, [rows, title]);
  const labels = labelLayout(rows, grid, start, typesetter.letters.width);
  const last = Math.max(0, ...labels.map(({ page }) => page));
  const pages = Array.from({ length: last + 1 }, (_, page) => labels.filter((label) => label.page === page));
  const set = typesetter.set("labels.typ", {
    labels: JSON.stringify({
      title,
      language,
      outlines,
      width: grid.pageWidth,
      height: grid.pageHeight,
      pages,
    }),
  });
  return { bytes: set.pdf(), pages: set.pages, labels };
}
