import { createReadStream } from "node:fs";
import { createInterface } from "node:readline";

export interface NumberedLine {
  /** Number of the line in the file, from 1. */
  readonly line: number;
  readonly text: string;
}

const opened = (path: string) => (path === "-" ? process.stdin : createReadStream(path));

/** The lines of a file that hold something, one after another, never the whole file at once. "-" is standard input. */
export async function* linesOf(path: string): AsyncGenerator<NumberedLine> {
  let line = 0;
  const lines = createInterface({
    input: opened(path).setEncoding("utf8"),
    crlfDelay: Number.POSITIVE_INFINITY,
  });
  for await (const text of lines) {
    line += 1;
    const words = line === 1 ? text.replace(/^\uFEFF/, "") : text;
    if (words.trim() !== "") yield { line, text: words };
  }
}

/** How many lines hold something; undefined for standard input, which can be read only once. */
export async function countLines(path: string): Promise<number | undefined> {
  if (path === "-") return undefined;
  let count = 0;
  for await (const _ of linesOf(path)) count += 1;
  return count;
}
