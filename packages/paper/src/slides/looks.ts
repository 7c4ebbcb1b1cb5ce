/** Looks of the slides: ink on unbleached paper, as on the page. Lengths in inches, sizes of type in points. Declared preferences, no source. */
export const colours = {
  paper: "FAF7F0",
  ink: "22302B",
  soft: "4C5A54",
  line: "8B968F",
  accent: "7A3B1D",
  pale: "F4E6DC",
  white: "FFFFFF",
} as const;

/** Georgia is on most machines; whatever stands in for it may be wider, which fitting allows for. Arial has the widths that text is measured by. */
export const fonts = { heading: "Georgia", body: "Arial" } as const;

export const page = { width: 13.333, height: 7.5 } as const;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

const side = 0.75;
const wide = page.width - 2 * side;

export const boxes = {
  title: { x: side, y: 0.35, w: wide, h: 1.05 },
  /** Two thin rules below the title. */
  rules: { x: side, y: 1.48, w: wide, h: 0.06 },
  body: { x: side, y: 1.75, w: wide, h: 4.6 },
  besideChart: { x: side, y: 1.75, w: 6.3, h: 4.6 },
  chart: { x: 7.35, y: 1.75, w: page.width - side - 7.35, h: 4.6 },
  sources: { x: side, y: 6.42, w: wide - 1, h: 0.85 },
  number: { x: page.width - side - 0.8, y: 6.85, w: 0.8, h: 0.35 },
  opening: { x: side, y: 1.9, w: wide, h: 1.9 },
  openingRules: { x: side, y: 3.95, w: wide, h: 0.06 },
  openingBody: { x: side, y: 4.2, w: wide, h: 2.2 },
} as const satisfies Record<string, Box>;

/** Sizes of type that are tried, largest first; nothing that a class is to read is smaller than the last. */
export const sizes = {
  title: [34, 32, 30, 28, 26, 24, 22, 20],
  body: [28, 26, 24, 22, 20, 18],
  table: [20, 18, 16, 14],
} as const;
export const sourceSizes = [11, 10, 9] as const;
export const chartText = 14;

/** Height of a line in the unit of its size, and the gap after a piece of text. */
export const lineHeight = 1.2;
export const gapAfter = 0.45;

/** Headings are measured this much wider than the widths that are known: whatever stands in for Georgia may be. */
export const headingWiden = 1.4;
/** Running text is measured a little wider too, since programs break lines each in their own way. */
export const bodyWiden = 1.03;
export const pointsPerInch = 72;
