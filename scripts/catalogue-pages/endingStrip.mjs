import { chartLine, chartText, plotBottom, plotTop, textWidth, view } from "./chartFrame.mjs";
import { element } from "./html.mjs";
import { endingWords } from "./words.mjs";

const bracketPlace = plotTop - 8;
const rowHeight = 13;
const gap = 6;

/** The lowest row, counted upwards from the curve, in which a word meets no other. */
function freeRow(rows, from, to) {
  const free = rows.findIndex((taken) =>
    taken.every((other) => to + gap < other.from || other.to + gap < from),
  );
  return free < 0 ? rows.length : free;
}

/**
 * Where a word is centred: over its stretch; the first and the last word give way outwards, where there is room beside the chart, before
 * they reach over their neighbour's stretch.
 */
function centreOf(run, half, place, { isFirst, isLast }) {
  const middle = Math.round((place(run.from) + place(run.to)) / 2);
  const inwards = isFirst && !isLast ? Math.min(middle, place(run.to) - half) : middle;
  const outwards = isLast && !isFirst ? Math.max(inwards, place(run.from) + half) : inwards;
  return Math.max(half + 2, Math.min(view.width - half - 2, outwards));
}

/** Places of the words over the stretches of a curve, with the row of each. */
export function placedWords(runs, place) {
  const rows = [];
  return runs.map((run, index) => {
    const words = endingWords(run.endedBy);
    const middle = Math.round((place(run.from) + place(run.to)) / 2);
    const half = Math.ceil(textWidth(words) / 2);
    const x = centreOf(run, half, place, { isFirst: index === 0, isLast: index === runs.length - 1 });
    const row = freeRow(rows, x - half, x + half);
    rows[row] = [...(rows[row] ?? []), { from: x - half, to: x + half }];
    return { ...run, words, middle, x, row };
  });
}

/** What ends the life, over every stretch of the curve: a bracket, its word, and dotted lines where one gives way to another. */
export function endingStrip(runs, place) {
  const placed = placedWords(runs, place);
  const borders = placed
    .slice(1)
    .map((run, index) => Math.round((place(placed[index].to) + place(run.from)) / 2));
  const heightOf = ({ row }) => bracketPlace - 6 - row * rowHeight;
  return element(
    "g",
    { class: "endings" },
    borders.map((x) => chartLine(x, bracketPlace - 3, x, plotBottom, "border")),
    placed.map((word) => [
      chartLine(place(word.from) - 2, bracketPlace, place(word.to) + 2, bracketPlace, "bracket"),
      word.row > 0 && chartLine(word.middle, bracketPlace, word.middle, heightOf(word) + 3, "leader"),
    ]),
    placed.map((word) => chartText(word.x, heightOf(word), word.words, { "text-anchor": "middle" })),
  );
}
