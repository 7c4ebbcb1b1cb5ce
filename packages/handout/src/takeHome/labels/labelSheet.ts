/** A sheet of labels by its measures alone [mm]. Labels lie in rows and columns at even distances, the first at the margins. */
export interface LabelSheet {
  readonly pageWidth: number;
  readonly pageHeight: number;
  readonly columns: number;
  readonly rows: number;
  readonly labelWidth: number;
  readonly labelHeight: number;
  readonly marginLeft: number;
  readonly marginTop: number;
  /** Between one label and the next. */
  readonly gapAcross: number;
  readonly gapDown: number;
}

const sheet = (
  [pageWidth, pageHeight]: readonly [number, number],
  [columns, rows]: readonly [number, number],
  [labelWidth, labelHeight]: readonly [number, number],
  [marginLeft, marginTop]: readonly [number, number],
  [gapAcross, gapDown]: readonly [number, number],
): LabelSheet => ({
  pageWidth,
  pageHeight,
  columns,
  rows,
  labelWidth,
  labelHeight,
  marginLeft,
  marginTop,
  gapAcross,
  gapDown,
});

/** ISO 216 A4, and US Letter (8.5 by 11 in) [mm]. */
const a4 = [210, 297] as const;
const letter = [215.9, 279.4] as const;

/**
 * Usual grids, named by page, columns by rows, and label size in mm. Common practice, no source, and from memory: measure a sheet before printing on it. Margins left out of the
 * memory are those that centre the grid on the page.
 */
export const usualSheets = {
  "a4-3x7-63.5x38.1": sheet(a4, [3, 7], [63.5, 38.1], [7.25, 15.15], [2.5, 0]),
  "a4-2x7-99.1x38.1": sheet(a4, [2, 7], [99.1, 38.1], [4.65, 15.15], [2.5, 0]),
  "a4-3x8-70x37": sheet(a4, [3, 8], [70, 37], [0, 0.5], [0, 0]),
  "a4-2x4-105x74": sheet(a4, [2, 4], [105, 74], [0, 0.5], [0, 0]),
  "letter-3x10-66.7x25.4": sheet(letter, [3, 10], [66.7, 25.4], [4.7, 12.7], [3.2, 0]),
  "letter-2x5-101.6x50.8": sheet(letter, [2, 5], [101.6, 50.8], [4, 12.7], [4.7, 0]),
} as const satisfies Record<string, LabelSheet>;
export type UsualSheet = keyof typeof usualSheets;

/** Smallest label that holds a line to eat by in full [mm], largest page and most labels: declared, no source. */
const least = { labelWidth: 25, labelHeight: 12 };
const most = { page: 1500, across: 50 };

/** What is wrong with a sheet, in words for the person; empty where nothing is. */
export interface SheetFault {
  readonly thing: string;
  readonly value: string;
  readonly remedy: string;
}

/** Far less than anybody can measure [mm]. */
const slack = 1e-6;
const shown = (value: number): string => String(Math.round(value * 100) / 100);

function direction(
  name: string,
  page: number,
  margin: number,
  count: number,
  label: number,
  gap: number,
): SheetFault[] {
  const taken = margin + count * label + (count - 1) * gap;
  if (taken <= page + slack) return [];
  const value = `margin, labels and gaps take ${shown(taken)} mm of ${shown(page)} mm`;
  return [
    { thing: `label sheet ${name}`, value, remedy: "Measure again: all labels have to lie on the page." },
  ];
}

/** Checks that a sheet can be: whole numbers of labels, each big enough to write on, all of them on the page. */
export function sheetFaults(of: LabelSheet): SheetFault[] {
  const { pageWidth, pageHeight, columns, rows, labelWidth, labelHeight } = of;
  const counts = [columns, rows].every(
    (count) => Number.isInteger(count) && count >= 1 && count <= most.across,
  );
  if (!counts) {
    const value = `${columns} columns and ${rows} rows`;
    return [{ thing: "label sheet", value, remedy: `Give whole numbers from 1 to ${most.across}.` }];
  }
  if (!Object.values(of).every((value) => Number.isFinite(value) && value >= 0 && value <= most.page)) {
    const value = Object.values(of).map(shown).join(", ");
    return [{ thing: "label sheet", value, remedy: `Give measures from 0 to ${most.page} mm.` }];
  }
  if (labelWidth < least.labelWidth || labelHeight < least.labelHeight) {
    const value = `labels of ${shown(labelWidth)} by ${shown(labelHeight)} mm`;
    const remedy = `Give labels of at least ${least.labelWidth} by ${least.labelHeight} mm: less does not hold the words.`;
    return [{ thing: "label sheet", value, remedy }];
  }
  return [
    ...direction("width", pageWidth, of.marginLeft, columns, labelWidth, of.gapAcross),
    ...direction("height", pageHeight, of.marginTop, rows, labelHeight, of.gapDown),
  ];
}

/** Where a label lies: its page from 0, and its upper left corner and size [mm]. */
export interface LabelPosition {
  readonly page: number;
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
}

/** Position of the label that is the `index`-th from the first of the first page, counted along the rows. */
export function labelPosition(of: LabelSheet, index: number): LabelPosition {
  const onPage = of.columns * of.rows;
  const page = Math.floor(index / onPage);
  const row = Math.floor((index % onPage) / of.columns);
  const column = index % of.columns;
  return {
    page,
    row,
    column,
    x: of.marginLeft + column * (of.labelWidth + of.gapAcross),
    y: of.marginTop + row * (of.labelHeight + of.gapDown),
  };
}
