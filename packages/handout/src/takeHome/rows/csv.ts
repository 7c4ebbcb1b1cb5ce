import { plainText } from "../../words/plainText.js";
import type { Cell } from "./planRows.js";

/**
 * Characters that make a spreadsheet take a cell for a formula, as they stand or in full width; white space before one is passed over by some.
 * The apostrophe is among them so that the mark can be taken off again without doubt.
 */
const formula = /^[\s'＝＋－＠=+\-@]/u;

/** What has to stand in quotes: RFC 4180, and semicolons and tabs, at which some programs part cells too. */
const quotedWhere = /[",;\t\r\n]|^\s|\s$/u;

/** The mark before a text that a spreadsheet would take for a formula. */
const mark = "'";

/** A text made harmless: with an apostrophe before it where it begins like a formula or with an apostrophe. Other control characters and halves of characters are made visible. */
const harmless = (text: string): string => {
  const whole = text
    .split(/([\t\r\n]+)/)
    .map((part, index) => (index % 2 === 1 ? part : plainText(part)))
    .join("")
    .replace(/\p{Cs}/gu, "\ufffd");
  return formula.test(whole) ? mark + whole : whole;
};

/** The text as it was before `csvText` wrote it. */
export const textOfCell = (cell: string): string => (cell.startsWith(mark) ? cell.slice(1) : cell);

function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return String(cell);
  const text = harmless(cell);
  return quotedWhere.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A table as CSV (RFC 4180): a header line, lines parted and ended by CR LF, commas, a point in decimals. Numbers stand as they are; text that a spreadsheet would take for a formula has an
 * apostrophe before it.
 */
export function csvText<Row extends Readonly<Record<string, Cell>>>(
  columns: readonly { readonly name: keyof Row & string }[],
  rows: readonly Row[],
): string {
  const header = columns.map(({ name }) => name);
  const lines = [header, ...rows.map((row) => columns.map(({ name }) => cellText(row[name] ?? null)))];
  return lines.map((cells) => `${cells.join(",")}\r\n`).join("");
}
