import { words } from "./words.mjs";

const moved = (month) => ((month + 5) % 12) + 1;
const monthsIn = ([first, last]) => {
  const count = ((last - first + 12) % 12) + 1;
  return Array.from({ length: count }, (_, index) => ((first - 1 + index) % 12) + 1);
};
const isWholeYear = (spans) => new Set(spans.flatMap(monthsIn)).size === 12;

/** Harvest months in both hemispheres: the south is the north moved by six months where the data give no south of their own. */
export function seasonOf({ northern, southern }) {
  const south = southern ?? northern.map((each) => each.map(moved));
  return { northern, southern: south, inferred: southern === undefined && !isWholeYear(northern) };
}

/** Spans of months in words: "June to November", or that it is all year. */
export function seasonWords(language, spans) {
  const own = words[language];
  if (isWholeYear(spans)) return own.allYear;
  return spans
    .map(([first, last]) =>
      first === last ? own.months[first - 1] : `${own.months[first - 1]} ${own.to} ${own.months[last - 1]}`,
    )
    .join(", ");
}
