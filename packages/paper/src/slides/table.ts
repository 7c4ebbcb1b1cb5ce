import type { SlidePart } from "@keepwright/handout";
import type Maker from "pptxgenjs";
import { type Box, colours, fonts } from "./looks.js";
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

function widthsOf({ head, rows }: Table, width: number): number[] {
  const longest = head.map((word, column) =>
    Math.min(40, Math.max(word.length, ...rows.map((row) => row[column]?.length ?? 0))),
  );
  const sum = longest.reduce((total, length) => total + Math.max(8, length), 0);
  return longest.map((length) => (Math.max(8, length) / sum) * width);
}

const rowHeight = (row: readonly string[], widths: readonly number[], size: number): number =>
  2 * cell.above +
  Math.max(
    ...row.map((text, column) => heightIn(text, widths[column]! - 2 * cell.side, { size, bold: true })),
  );

/** Shares the rows of a table out over slides: at the largest size at which all fit on one, else at the smallest over several. */
export function tableShares(table: Table, box: Box, sizes: readonly number[]): TableShare[] {
  const widths = widthsOf(table, box.w);
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
