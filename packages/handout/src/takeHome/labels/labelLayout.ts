import { brokenLines, isWithin, shortened, type Type } from "./fitText.js";
import type { LabelRow } from "./labelRows.js";
import { type LabelPosition, type LabelSheet, labelPosition } from "./labelSheet.js";
import { type Measure, textWidth } from "./textWidth.js";

/** Parts of a label from top to bottom. */
export type LabelRole = "name" | "until" | "place" | "putAway" | "how";

/** A line of type on a page: its left end on the baseline, size and measured width [mm]. */
export interface PlacedLine {
  readonly role: LabelRole;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly bold: boolean;
  readonly width: number;
}

/** A label at its place on a page, with its lines. */
export interface PlacedLabel extends LabelPosition {
  readonly lot: string;
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PlacedLine[];
}

/** mm in a typographic point: 1/72 in. */
const point = 25.4 / 72;
/** Free edge within a label [mm]: printers feed a little askew. Distance of lines and height of capitals and rising letters by type size. Common practice, no source. */
const edge = 2;
const lineHeight = 1.2;
const ascent = 0.8;
/** Types are drawn smaller where words are many, down to this share; read at arm's length they are still 6 pt. Declared, no source. */
const scales = [1, 0.95, 0.9, 0.85, 0.8, 0.75];
/** Where there is room on every label all of them are drawn larger, alike, up to this. */
const largerScales = [1.6, 1.5, 1.4, 1.3, 1.2, 1.1];

const types: Readonly<Record<LabelRole, Type>> = {
  name: { size: 12 * point, bold: true },
  until: { size: 10 * point, bold: true },
  place: { size: 8 * point, bold: false },
  putAway: { size: 8 * point, bold: false },
  how: { size: 8 * point, bold: false },
};

interface Piece {
  readonly role: LabelRole;
  readonly text: string;
  /** Lines it may take. */
  readonly most: number;
}

function piecesOf(row: LabelRow): Piece[] {
  return [
    { role: "name", text: row.name, most: 2 },
    { role: "until", text: row.until, most: 3 },
    ...row.places.map((text): Piece => ({ role: "place", text, most: 2 })),
    { role: "putAway", text: row.putAway, most: 1 },
    ...(row.how === undefined ? [] : [{ role: "how", text: row.how, most: 2 } as const]),
  ];
}

interface Line {
  readonly role: LabelRole;
  readonly text: string;
  readonly type: Type;
}

const scaled = (role: LabelRole, scale: number): Type => ({ ...types[role], size: types[role].size * scale });
const heightOf = (lines: readonly Line[]): number =>
  lines.reduce((sum, { type }) => sum + type.size * lineHeight, 0);

/** What a label has room for: width and height within its free edges [mm], and how wide text is in the font. */
interface Room {
  readonly width: number;
  readonly height: number;
  readonly measure: Measure;
}

/** All pieces in full, or undefined where they do not fit so. */
function inFull(
  pieces: readonly Piece[],
  { width, height, measure }: Room,
  scale: number,
): Line[] | undefined {
  const lines: Line[] = [];
  for (const { role, text, most } of pieces) {
    const type = scaled(role, scale);
    const broken = brokenLines(text, width, type, measure);
    if (broken.length > most || !isWithin(broken, width, type, measure)) return undefined;
    lines.push(...broken.map((line) => ({ role, text: line, type })));
  }
  return heightOf(lines) <= height ? lines : undefined;
}

/** A text in one line, as small as it takes. */
function squeezed(role: LabelRole, text: string, { width, height, measure }: Room): Line[] {
  const type = scaled(role, scales.at(-1) ?? 1);
  const size = Math.min(
    type.size,
    type.size * (width / measure(text, type.size, type.bold)),
    height / lineHeight,
  );
  return [{ role, text, type: { ...type, size } }];
}

const firstWord = (text: string): string => (text.includes(" ") ? `${text.split(" ")[0]}…` : text);

/** In this order pieces get the room there is. */
const importance: readonly LabelRole[] = ["until", "name", "place", "how", "putAway"];

/** Pieces in the smallest type, the less important ones shortened by whole words or left out. Until when it is good is never shortened: words left off could turn its sense. */
function asFits(pieces: readonly Piece[], { width, height, measure }: Room): Line[] {
  const scale = scales.at(-1) ?? 1;
  const kept = new Map<Piece, Line[]>();
  let free = height;
  const ordered = importance.flatMap((role) => pieces.filter((piece) => piece.role === role));
  for (const piece of ordered) {
    const type = scaled(piece.role, scale);
    const room = Math.min(piece.most, Math.floor(free / (type.size * lineHeight) + 1e-9));
    const words = room < 1 ? [] : shortened(piece.text, width, room, type, measure);
    const cut = words.at(-1)?.endsWith("…") ?? false;
    const lines =
      piece.role === "until" && (words.length === 0 || cut)
        ? squeezed("until", piece.text, { width, height: free, measure })
        : piece.role === "name" && words.length === 0
          ? squeezed("name", firstWord(piece.text), { width, height: free, measure })
          : words.map((text) => ({ role: piece.role, text, type }));
    kept.set(piece, lines);
    free -= heightOf(lines);
  }
  return pieces.flatMap((piece) => kept.get(piece) ?? []);
}

/** The lines of a label, in the largest type, up to the one for all, in which all of them fit. */
function linesFor(row: LabelRow, room: Room, common: number): Line[] {
  const pieces = piecesOf(row);
  for (const scale of [common, ...scales]) {
    const lines = inFull(pieces, room, scale);
    if (lines) return lines;
  }
  return asFits(pieces, room);
}

function placed(
  row: LabelRow,
  { labelWidth: width, labelHeight: height }: LabelSheet,
  position: LabelPosition,
  room: Room,
  common: number,
): PlacedLabel {
  let top = position.y + edge;
  const lines = linesFor(row, room, common).map(({ role, text, type: { size, bold } }): PlacedLine => {
    const y = top + (lineHeight - 1) * 0.5 * size + ascent * size;
    top += size * lineHeight;
    return { role, text, x: position.x + edge, y, size, bold, width: room.measure(text, size, bold) };
  });
  return { ...position, lot: row.lot, width, height, lines };
}

const roomOf = ({ labelWidth, labelHeight }: LabelSheet, measure: Measure): Room => ({
  width: labelWidth - 2 * edge,
  height: labelHeight - 2 * edge,
  measure,
});

/** The largest type in which every label says everything; the ordinary one where there is none above it. */
function commonScale(rows: readonly LabelRow[], room: Room): number {
  const all = rows.map(piecesOf);
  const fits = (scale: number) => all.every((pieces) => inFull(pieces, room, scale) !== undefined);
  return largerScales.find(fits) ?? 1;
}

/**
 * Every label at its place, with its lines of type measured to fit: what a page, a drawing or a PDF is made from.
 *
 * @param start the first free label of the first sheet, counted along the rows from 1
 * @param measure how wide text is in the font it is printed in
 */
export function labelLayout(
  rows: readonly LabelRow[],
  sheet: LabelSheet,
  start = 1,
  measure: Measure = textWidth,
): PlacedLabel[] {
  const room = roomOf(sheet, measure);
  const common = commonScale(rows, room);
  return rows.map((row, index) => placed(row, sheet, labelPosition(sheet, start - 1 + index), room, common));
}
