import type { HandoutContext } from "../../view/context.js";
import { plainText } from "../../words/plainText.js";
import type { PlacedLabel, PlacedLine } from "./labelLayout.js";
import type { LabelSheet } from "./labelSheet.js";
import { isMeasured } from "./textWidth.js";

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const marked = (text: string): string =>
  plainText(text)
    .replace(/\p{Cs}/gu, "\ufffd")
    .replace(/[&<>"]/g, (character) => escapes[character] ?? character);

/** Measures to a thousandth of a millimetre. */
const measure = (value: number): string => String(Math.round(value * 1000) / 1000);

/** A line of type. Its length is the one it was measured with, whatever font is at hand. */
function lineMarks({ text, x, y, size, bold, width, role }: PlacedLine): string {
  const held = isMeasured(text) ? ` textLength="${measure(width)}" lengthAdjust="spacingAndGlyphs"` : "";
  return `<text class="${role}" x="${measure(x)}" y="${measure(y)}" font-size="${measure(size)}"${bold ? ' font-weight="bold"' : ""}${held}>${marked(text)}</text>`;
}

const outlineMarks = ({ x, y, width, height }: PlacedLabel): string =>
  `<rect x="${measure(x)}" y="${measure(y)}" width="${measure(width)}" height="${measure(height)}" fill="none" stroke="black" stroke-width="0.1"/>`;

/** One page as an SVG drawing in millimetres. */
export function labelDrawing(labels: readonly PlacedLabel[], sheet: LabelSheet, outlines: boolean): string {
  const width = measure(sheet.pageWidth);
  const height = measure(sheet.pageHeight);
  const marks = labels.flatMap((label) => [
    ...(outlines ? [outlineMarks(label)] : []),
    ...label.lines.map(lineMarks),
  ]);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="Helvetica, Arial, sans-serif" fill="black">`,
    ...marks,
    "</svg>",
  ].join("\n");
}

/** All pages as an HTML document that prints one sheet a page, at its true size, with nothing but the labels. */
export function labelPage(
  { speaker }: HandoutContext,
  labels: readonly PlacedLabel[],
  sheet: LabelSheet,
  outlines = false,
): string {
  const last = Math.max(0, ...labels.map(({ page }) => page));
  const drawings = Array.from({ length: last + 1 }, (_, page) =>
    labelDrawing(
      labels.filter((label) => label.page === page),
      sheet,
      outlines,
    ),
  );
  const size = `${measure(sheet.pageWidth)}mm ${measure(sheet.pageHeight)}mm`;
  return `<!doctype html>
<html lang="${speaker.tag}">
<head>
<meta charset="utf-8">
<title>${marked(speaker.say("label.title"))}</title>
<style>
@page { size: ${size}; margin: 0; }
body { margin: 0; }
svg { display: block; break-after: page; }
svg:last-child { break-after: auto; }
</style>
</head>
<body>
${drawings.join("\n")}
</body>
</html>
`;
}
