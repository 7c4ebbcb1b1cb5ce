import { type Measure, textWidth } from "./textWidth.js";

/** Type of a line. */
export interface Type {
  /** mm */
  readonly size: number;
  readonly bold: boolean;
}

const ellipsis = "…";

/** A text broken at spaces into lines no wider than `width`; a single word that is wider has a line of its own. */
export function brokenLines(
  text: string,
  width: number,
  { size, bold }: Type,
  measure: Measure = textWidth,
): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ").filter((one) => one !== "")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && measure(longer, size, bold) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** Whether every line is within the width: not so where one word is wider. */
export const isWithin = (
  lines: readonly string[],
  width: number,
  { size, bold }: Type,
  measure: Measure = textWidth,
): boolean => lines.every((line) => measure(line, size, bold) <= width);

/** The text in at most so many lines, with whole words left off at the end where it is longer, and a sign that they were; empty where not even one word fits. */
export function shortened(
  text: string,
  width: number,
  most: number,
  type: Type,
  measure: Measure = textWidth,
): string[] {
  const whole = brokenLines(text, width, type, measure);
  if (whole.length <= most && isWithin(whole, width, type, measure)) return whole;
  const words = text.split(" ").filter((word) => word !== "");
  for (let count = words.length - 1; count > 0; count--) {
    const cut = `${words
      .slice(0, count)
      .join(" ")
      .replace(/[\s,;:.(“"]+$/u, "")}${ellipsis}`;
    const lines = brokenLines(cut, width, type, measure);
    if (lines.length <= most && isWithin(lines, width, type, measure)) return lines;
  }
  return [];
}
