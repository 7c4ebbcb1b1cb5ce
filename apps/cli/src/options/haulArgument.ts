import type { ReadFrom } from "@keepwright/handout";
import type { Door } from "../door/door.js";
import { readStandardInput, readTextFile } from "../door/readText.js";
import { quoted, userError } from "../userError.js";

/** How a haul is named, for the help of commands that take one. */
export const haulHelp = `
HAUL is the name of a text file, "-" for standard input, or the haul itself in quotes. A name that looks like a file's
(with an ending such as .txt, or beginning with / or ./) is never taken for a haul.
`;

/** A haul as text, and where it came from. */
export interface HaulText {
  readonly text: string;
  readonly origin: ReadFrom;
}

/** Where it came from, within an error. */
export const originWords = ({ from, file }: ReadFrom): string =>
  from === "file" ? `the file ${file}` : from === "input" ? "standard input" : "the words given";

/** Looks like the name of a file rather than a haul: begins like a path, or ends like a file. */
export const looksLikePath = (text: string): boolean =>
  /^(\.{0,2}\/|~\/|[A-Za-z]:\\)\S*$/.test(text) || /^\S+\.[A-Za-z]{1,5}$/.test(text);

/**
 * The haul an argument stands for: "-" is standard input; the name of a file is that file; anything else is the haul
 * itself, unless it looks like the name of a file that is not there.
 */
export function haulFromArguments(door: Door, words: readonly string[]): HaulText {
  const [first = ""] = words;
  if (words.length > 1) {
    if (door.look(first) === "file") {
      throw userError(
        `haul ${quoted(words.join(" "))}`,
        "more than one argument",
        "Give one file at a time, or the haul in quotes.",
      );
    }
    return { text: words.join(" "), origin: { from: "words" } };
  }
  if (first === "-") return { text: readStandardInput(door), origin: { from: "input" } };
  if (door.look(first) !== "nothing" || looksLikePath(first)) {
    return { text: readTextFile(door, first, "haul file"), origin: { from: "file", file: quoted(first) } };
  }
  return { text: first, origin: { from: "no file", file: quoted(first) } };
}
