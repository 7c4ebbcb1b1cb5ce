import { brokenLines } from "@keepwright/handout";
import { bodyWiden, headingWiden, lineHeight, pointsPerInch } from "./looks.js";

export interface Lettering {
  /** pt */
  readonly size: number;
  readonly bold?: boolean;
  /** In the font of headings. */
  readonly heading?: boolean;
}

/** Lines a text takes in a box so wide [in]. */
export function linesIn(
  text: string,
  width: number,
  { size, bold = false, heading = false }: Lettering,
): number {
  const room = (width * pointsPerInch) / (heading ? headingWiden : bodyWiden);
  return text
    .split("\n")
    .reduce((sum, line) => sum + Math.max(1, brokenLines(line, room, { size, bold }).length), 0);
}

/** Height of a text in a box so wide [in]. */
export const heightIn = (text: string, width: number, lettering: Lettering): number =>
  (linesIn(text, width, lettering) * lettering.size * lineHeight) / pointsPerInch;

/** The largest of some sizes at which a text fits a box; the smallest where none does. */
export function sizeFor(
  text: string,
  width: number,
  height: number,
  sizes: readonly number[],
  lettering: Omit<Lettering, "size"> = {},
): number {
  return sizes.find((size) => heightIn(text, width, { ...lettering, size }) <= height) ?? sizes.at(-1)!;
}
