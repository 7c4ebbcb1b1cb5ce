import { plainText } from "../../words/plainText.js";

/** Longest line [octets], its end not counted: RFC 5545, section 3.1. */
const longest = 75;

function octets(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}

/** A text as a TEXT value: RFC 5545, section 3.3.11. Line breaks are kept as \n; other control characters and halves of characters are made visible. */
export const escapedText = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map((line) =>
      plainText(line)
        .replace(/\p{Cs}/gu, "\ufffd")
        .replace(/[\\;,]/g, "\\$&"),
    )
    .join("\\n");

/** Breaks a line where it grows too long, never within a character; what follows begins with a space. */
export function folded(line: string): string {
  let text = "";
  let length = 0;
  for (const character of line) {
    const size = octets(character);
    if (length + size > longest) {
      text += "\r\n ";
      length = 1;
    }
    text += character;
    length += size;
  }
  return text;
}

/** Lines as they are before they were broken. */
export const unfoldedLines = (text: string): string[] =>
  text
    .replace(/\r?\n[ \t]/g, "")
    .split(/\r?\n/)
    .filter((line) => line !== "");
