import type { Box } from "./kitchenScale.js";

export interface Block extends Box {
  readonly x: number;
  readonly y: number;
}

/** Least height of the row and width of a block at which its letter can be read [drawing units]. */
const leastHeight = 24;
const leastWidth = 14;

/** Width of a letter in the drawing's lettering, on the generous side [drawing units]. */
export const letterWidth = 8.2;
/** Width in which some letters can be read, with room on both sides [drawing units]. */
export const widthFor = (letters: string): number => Math.max(leastWidth, letters.length * letterWidth + 4);

/** Lots by rows, each as full as lets every lot have its least width; as many rows as that takes. */
function inRows(least: readonly number[], width: number): number[][] {
  const rows: number[][] = [[]];
  let filled = 0;
  least.forEach((each, lot) => {
    if (filled + each > width && filled > 0) {
      rows.push([]);
      filled = 0;
    }
    rows.at(-1)!.push(lot);
    filled += each;
  });
  return rows;
}

/**
 * Lots as rows of blocks along the bottom of a box, areas to scale. One row, as tall as the lots would stand if they were spread over the whole floor but at least a
 * letter high; more where their letters would not fit beside one another. A lot too small to see is drawn as wide as its letter, and when that is
 * too wide in all, every block of the row gives way alike.
 * @param litres of each lot @param perLitre square drawing units for a litre @param least width of each lot's letters
 */
export function packBlocks(
  litres: readonly number[],
  box: Box,
  perLitre: number,
  least: readonly number[] = litres.map(() => leastWidth),
): Block[] {
  const areas = litres.map((each) => each * perLitre);
  const area = areas.reduce((sum, each) => sum + each, 0);
  const wanted = inRows(least, box.width);
  const rows = wanted.length * leastHeight <= box.height ? wanted : [litres.map((_, lot) => lot)];
  const height = Math.min(box.height, Math.max(leastHeight * rows.length, area / box.width)) / rows.length;
  const blocks: Block[] = [];
  rows.forEach((lots, row) => {
    const widths = lots.map((lot) => Math.max(least[lot]!, areas[lot]! / height));
    const total = widths.reduce((sum, each) => sum + each, 0);
    const tight =
      total > box.width
        ? fitted(
            widths,
            lots.map((lot) => least[lot]!),
            box.width,
          )
        : widths;
    let x = 0;
    lots.forEach((lot, index) => {
      blocks[lot] = { x, y: box.height - height * (row + 1), width: tight[index]!, height };
      x += tight[index]!;
    });
  });
  return blocks;
}

/** Widths that fit together: what is wider than its letter gives way first; where that is not enough, all of them do. */
function fitted(widths: readonly number[], least: readonly number[], room: number): number[] {
  const sum = (values: readonly number[]) => values.reduce((total, each) => total + each, 0);
  const needed = sum(least);
  if (needed > room) return least.map((each) => (each * room) / needed);
  const spare = sum(widths) - needed;
  const share = spare === 0 ? 0 : (room - needed) / spare;
  return widths.map((each, index) => least[index]! + (each - least[index]!) * share);
}
