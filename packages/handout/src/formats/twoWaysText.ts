import type { TwoWaysCell, TwoWaysRow, TwoWaysSide, TwoWaysView } from "../view/twoWaysView.js";
import { blankLine, item, wrapped } from "./lines.js";

const saidOf = ({ unsorted, planned }: TwoWaysRow): string =>
  [unsorted.words, unsorted.places, planned.words, planned.places].join("|");

/** One haul laid two ways as plain text: what it comes to, the rules, then every evening with what has changed since the one before. */
export function twoWaysText(view: TwoWaysView): string {
  const { sides, fates } = view;
  const figures = (name: string, { eaten, lost, left }: TwoWaysSide): string[] =>
    item(`${name}: ${fates.eaten} ${eaten.words}; ${fates.lost} ${lost.words}; ${fates.left} ${left.words}`);
  const cell = (name: string, { words, places }: TwoWaysCell): string[] =>
    wrapped(`${name}: ${words}${places === "" ? "" : ` (${places})`}`, "      ");
  const changed = (row: TwoWaysRow, at: number, index: number): boolean => {
    const before = view.evenings[at - 1]?.rows[index];
    return before === undefined || saidOf(before) !== saidOf(row);
  };
  const lines = [
    view.title,
    ...wrapped(view.lead),
    ...wrapped(view.sum),
    blankLine,
    ...view.notes.flatMap((note) => wrapped(note)),
    ...view.evenings.flatMap(({ heading, unsorted, planned, rows }, at) => [
      blankLine,
      heading,
      ...figures(sides.unsorted, unsorted),
      ...figures(sides.planned, planned),
      ...rows
        .filter((row, index) => changed(row, at, index))
        .flatMap((row) => [
          `    ${row.name}`,
          ...cell(sides.unsorted, row.unsorted),
          ...cell(sides.planned, row.planned),
        ]),
    ]),
  ];
  return `${lines.join("\n")}\n`;
}
