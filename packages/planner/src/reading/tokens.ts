/** The smallest pieces of what was typed. Offsets are UTF-16 positions in the whole text. */
export interface Token {
  readonly kind: "word" | "number" | "mark";
  readonly text: string;
  /** Lower case, no accents. */
  readonly folded: string;
  readonly from: number;
  readonly to: number;
  /** True when white space, or the start of the line, comes before it. */
  readonly spaced: boolean;
}

/** In turn: mark-up (one piece, so that it is asked about as it stands), a word, a number, any other character. */
const pieces =
  /(<(?:script|style)\b[^<>]{0,500}>[^<>]{0,500}<\/(?:script|style)\s*>|<[/!?]?[a-zA-Z][^<>]{0,500}>)|(\p{L}[\p{L}\p{M}'’]*)|(\d{1,3}(?:[\u00a0\u2009\u202f]\d{3}(?!\d))+|(?<![\p{L}\p{N}.,])\.\d+(?![.,]?\d)|\d+(?:[.,]\d+)*(?:[eE][+-]?\d+(?!\p{L}))?|[½⅓⅔¼¾⅛⅜⅝⅞])|(\S)/gu;
const marks = /\p{M}+/gu;

/** Pieces of one line; `start` is the line's own position in the text. */
export function tokensOf(line: string, start: number): Token[] {
  const tokens: Token[] = [];
  let end = 0;
  for (const match of line.matchAll(pieces)) {
    const [text, , word, number] = match;
    const from = match.index;
    tokens.push({
      kind: word !== undefined ? "word" : number !== undefined ? "number" : "mark",
      text,
      folded: text.normalize("NFD").replace(marks, "").replace(/['’]/g, "").toLowerCase(),
      from: start + from,
      to: start + from + text.length,
      spaced: from === 0 || from > end,
    });
    end = from + text.length;
  }
  return tokens;
}

/** Terminal control sequences of ECMA-48: CSI ("colour"), and OSC up to its end. */
const controlSequences =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
  /(?:\u001b\[|\u009b)[0-?]*[ -/]*[@-~]|(?:\u001b\]|\u009d)[^\u0007\u001b\u009c\n\r]{0,200}(?:\u0007|\u001b\\|\u009c)/g;

/** The text with terminal control sequences blanked, so that every position stays true. */
export const withoutControlSequences = (text: string): string =>
  text.replace(controlSequences, (sequence) => " ".repeat(sequence.length));

/** Lines of a text with their positions. Any of the usual line ends, and form feeds, part lines. */
export function linesOf(text: string): { line: string; start: number }[] {
  const lines: { line: string; start: number }[] = [];
  let start = 0;
  for (const match of text.matchAll(/\r\n|[\n\r\f\v\u0085\u2028\u2029]/g)) {
    lines.push({ line: text.slice(start, match.index), start });
    start = match.index + match[0].length;
  }
  lines.push({ line: text.slice(start), start });
  return lines;
}

const bullet = /^\s*(?:[-–—*•·‣◦▪○●☐☑✓>]+\s+|[•·‣◦▪○●☐☑✓]|\(?\d{1,3}[.)]\s+(?=\S)|\[[ xX]?\]\s*)/u;

/** Length of the bullet or number that opens a line of a list; 0 when there is none. */
export function bulletLength(line: string): number {
  const first = bullet.exec(line)?.[0].length ?? 0;
  return first > 0 && first < line.length ? first + bulletLength(line.slice(first)) : first;
}
