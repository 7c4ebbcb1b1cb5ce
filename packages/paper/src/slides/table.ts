import { type SlidePart, textWidth } from "@keepwright/handout";
import type Maker from "pptxgenjs";
import { type Box, bodyWiden, colours, fonts, pointsPerInch } from "./looks.js";
import { heightIn } from "./measure.js";

type Table = Extract<SlidePart, { part: "table" }>;

/** Rows of a table that stand on one slide, and the size they are set in [pt]. */
export interface TableShare {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly size: number;
  /** Of each column [in]. */
  readonly widths: readonly number[];
}

/** Space within a cell [in]: left and right, above and below. */
const cell = { side: 0.08, above: 0.06 } as const;

const wordsOf = (text: string): string[] => text.split(/\s+/u);

/** Width [in] of a column's longest word, so that no word is broken where it need not be. */
function leastWidth(texts: readonly string[], size: number): number {
  const longest = Math.max(...texts.flatMap(wordsOf).map((word) => textWidth(word, size, true)));
  return (longest * bodyWiden) / pointsPerInch + 2 * cell.side;
}

/** Columns share the width by their longest texts, once each has room for its longest word; where not even those fit, by the texts alone. */
function widthsOf({ head, rows }: Table, width: number, size: number): number[] {
  const columns = head.map((word, column) => [word, ...rows.map((row) => row[column] ?? "")]);
  const lengths = columns.map((texts) => Math.min(40, Math.max(8, ...texts.map(({ length }) => length))));
  const sum = lengths.reduce((total, length) => total + length, 0);
  const shares = lengths.map((length) => (length / sum) * width);
  const least = columns.map((texts) => leastWidth(texts, size));
  const needed = least.reduce((total, one) => total + one, 0);
  if (needed >= width || shares.every((share, column) => share >= least[column]!)) return shares;
  const spare = shares.map((share, column) => Math.max(0, share - least[column]!));
  const spared = spare.reduce((total, one) => total + one, 0);
  return least.map((one, column) => one + (spare[column]! / spared) * (width - needed));
}

const rowHeight = (row: readonly string[], widths: readonly number[], size: number): number =>
  2 * cell.above +
  Math.max(
    ...row.map((text, column) => heightIn(text, widths[column]! - 2 * cell.side, { size, bold: true })),
  );

/** Shares the rows of a table out over slides: at the largest size at which all fit on one, else at the smallest over several. */
export function tableShares(table: Table, box: Box, sizes: readonly number[]): TableShare[] {
  const widths = widthsOf(table, box.w, sizes[0]!);
  const heights = (size: number): number[] => table.rows.map((row) => rowHeight(row, widths, size));
  const room = (size: number): number => box.h - rowHeight(table.head, widths, size);
  const whole = sizes.find((size) => heights(size).reduce((sum, one) => sum + one, 0) <= room(size));
  const size = whole ?? sizes.at(-1)!;
  const out: (readonly string[])[][] = [[]];
  let used = 0;
  for (const [index, row] of table.rows.entries()) {
    const height = heights(size)[index]!;
    if (used > 0 && used + height > room(size)) {
      out.push([]);
      used = 0;
    }
    out.at(-1)!.push(row);
    used += height;
  }
  return out.map((rows) => ({ head: table.head, rows, size, widths }));
}

/** Puts a table on a slide, with a head row that programs know as one. */
export function addTable(
  slide: Maker.default.Slide,
  { head, rows, size, widths }: TableShare,
  box: Box,
  lang: string,
): void {
  const rule = { type: "solid", color: colours.line, pt: 1 } as const;
  const none = { type: "none" } as const;
  const margin: [number, number, number, number] = [cell.above, cell.side, cell.above, cell.side];
  const base = {
    fontFace: fonts.body,
    fontSize: size,
    color: colours.ink,
    valign: "top",
    margin,
    lang,
  } as const;
  const written = (text: string, bold: boolean) => ({
    text,
    options: {
      ...base,
      bold,
      border: [none, none, rule, none] as [typeof none, typeof none, typeof rule, typeof none],
    },
  });
  slide.addTable(
    [
      head.map((word) => written(word, true)),
      ...rows.map((row) => row.map((word, column) => written(word, column === 0))),
    ],
    { x: box.x, y: box.y, w: box.w, colW: [...widths] },
  );
}
