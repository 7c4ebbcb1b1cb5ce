import type { Box } from "./kitchenScale.js";

export interface Block extends Box {
  readonly x: number;
  readonly y: number;
}

/** Least height of the row and width of a block at which its letter can be read [drawing units]. */
const leastHeight = 24;
const leastWidth = 14;

/**
 * Lots as a row of blocks along the bottom of a box, areas to scale. The row is as tall as the lots would stand if they
 * were spread over the whole floor, but at least a letter high; a lot too small to see is drawn one letter wide, and when
 * that is too wide in all, every block gives way alike.
 * @param litres of each lot @param perLitre square drawing units for a litre
 */
export function packBlocks(litres: readonly number[], box: Box, perLitre: number): Block[] {
  const areas = litres.map((each) => each * perLitre);
  const area = areas.reduce((sum, each) => sum + each, 0);
  const height = Math.min(box.height, Math.max(leastHeight, area / box.width));
  const widths = areas.map((each) => Math.max(leastWidth, each / height));
  const total = widths.reduce((sum, each) => sum + each, 0);
  const fit = Math.min(1, box.width / Math.max(total, 1));
  let x = 0;
  return widths.map((each) => {
    const block = { x, y: box.height - height, width: each * fit, height };
    x += each * fit;
    return block;
  });
}
