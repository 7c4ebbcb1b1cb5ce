import { choiceLetters, type SlidePart } from "@keepwright/handout";
import { gapAfter, lineHeight, pointsPerInch } from "./looks.js";
import { heightIn } from "./measure.js";

/** What cannot be parted between two slides. */
export type Piece =
  | { readonly piece: "pair"; readonly name: string; readonly text: string }
  | { readonly piece: "item"; readonly mark: string; readonly text: string }
  | { readonly piece: "text" | "heading" | "caution"; readonly text: string };

/** Room for the names of pairs and for marks, in the unit of the size of type [1]. Declared preferences, no source. */
export const nameEms = 5.2;
export const markEms = 1.2;
const innerMargin = 0.12;

/** The pieces of the parts of a slide, but for tables, which are set whole. */
export function piecesOf(parts: readonly SlidePart[]): Piece[] {
  return parts.flatMap(piecesOfPart);
}

function piecesOfPart(part: SlidePart): Piece[] {
  switch (part.part) {
    case "pairs":
      return part.rows.map(({ name, text }) => ({ piece: "pair", name, text }));
    case "list":
      return part.items.map((text, index) => ({
        piece: "item",
        mark: part.mark === "letter" ? `${choiceLetters[index] ?? "?"}.` : "–",
        text,
      }));
    case "text":
    case "heading":
      return [{ piece: part.part, text: part.text }];
    case "caution":
      return [{ piece: "caution", text: part.lines.join("\n") }];
    case "table":
      return [];
  }
}

/** Width left for the words of a piece [in]. */
export function textWidthOf({ piece }: Piece, width: number, size: number): number {
  const em = size / pointsPerInch;
  if (piece === "pair") return width - nameEms * em;
  if (piece === "item") return width - markEms * em;
  return piece === "caution" ? width - 2 * innerMargin : width;
}

/** Height of a piece without the gap after it [in]. */
export function heightOf(piece: Piece, width: number, size: number): number {
  const bold = piece.piece === "heading";
  const own = heightIn(piece.text, textWidthOf(piece, width, size), { size, bold, heading: bold });
  if (piece.piece === "pair")
    return Math.max(
      own,
      heightIn(piece.name, (nameEms * size) / pointsPerInch - 0.1, { size: nameSize(size) }),
    );
  return piece.piece === "caution" ? own + 2 * innerMargin : own;
}

export const nameSize = (size: number): number => Math.max(14, Math.round(0.72 * size));
export const gap = (size: number): number => (gapAfter * size * lineHeight) / pointsPerInch;

/** Height of pieces one below the other [in]. */
export const stackHeight = (pieces: readonly Piece[], width: number, size: number): number =>
  pieces.reduce((sum, piece) => sum + heightOf(piece, width, size), 0) +
  gap(size) * Math.max(0, pieces.length - 1);
