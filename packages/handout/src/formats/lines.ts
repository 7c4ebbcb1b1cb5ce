import type { HandoutContext } from "../view/context.js";
import type { PlaceView } from "../view/places.js";
import type { MessageKey, Speaker } from "../words/speaker.js";

/** Widest line of plain text: fits an ordinary terminal and a printed page. */
const width = 88;
export const blankLine = "";

/** Breaks a line at spaces; lines after the first are set in a little further. */
export function wrapped(text: string, indent = ""): string[] {
  const lines: string[] = [];
  let line = indent;
  for (const word of text.split(" ")) {
    const bare = line.trim() === "" || line.trim() === "-";
    if (!bare && line.length + word.length + 1 > width) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else {
      line += (line.endsWith(" ") || line === "" ? "" : " ") + word;
    }
  }
  return [...lines, line];
}

export const item = (text: string, indent = "  "): string[] => wrapped(`- ${text}`, indent);

export type Heading = Extract<MessageKey, `heading.${string}`>;

/** A heading with its lines below, or nothing where there are none. */
export const section = ({ say, tag }: Speaker, heading: Heading, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [say(heading).toLocaleUpperCase(tag), ...lines, blankLine];

function placeLines(place: PlaceView): string[] {
  const head = wrapped(place.line, "  ");
  const rows = [...place.entries.map(({ line }) => line), ...place.later];
  return [...head, ...rows.flatMap((row) => item(row, "    "))];
}

/** Places in use, each with what goes in it; then the rest in a line. */
export function placesLines({ speaker }: HandoutContext, places: readonly PlaceView[]): string[] {
  const used = places.filter(({ entries, later }) => entries.length + later.length > 0);
  const empty = places
    .filter((place) => !used.includes(place))
    .map(({ name }) => speaker.say("place.quoted", { place: name }));
  const rest =
    empty.length > 0 ? wrapped(speaker.say("place.empty", { places: speaker.list(empty) }), "  ") : [];
  return [...used.flatMap(placeLines), ...rest];
}
