import { quoted, userError } from "../userError.js";
import type { Door } from "./door.js";

/** Largest text read [bytes]: far beyond any haul or kitchen, small enough to be read at once. */
const largestText = 2_000_000;

/** Bytes as text. Throws UserError when they are not text in UTF-8. */
export function textOf(bytes: Uint8Array, thing: string): string {
  if (bytes.length > largestText) {
    throw userError(thing, `${bytes.length} bytes`, `Give a text of at most ${largestText} bytes.`);
  }
  if (bytes.includes(0)) throw userError(thing, "not a text file", "Give a plain text file, saved as UTF-8.");
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw userError(
      thing,
      "not text in UTF-8",
      "Save it as plain text with the encoding UTF-8, and try again.",
    );
  }
}

/** The text of a file. Throws UserError naming the path when it is missing, a folder, unreadable, or not text. */
export function readTextFile(door: Door, path: string, what: string): string {
  const thing = `${what} ${quoted(path)}`;
  const found = door.look(path);
  if (found === "nothing")
    throw userError(thing, "there is no such file", "Check the name and the folder you are in.");
  if (found === "folder") throw userError(thing, "this is a folder", "Name a file inside it.");
  let bytes: Uint8Array;
  try {
    bytes = door.readFile(path);
  } catch (error) {
    const { code = "unknown fault" } = error as NodeJS.ErrnoException;
    throw userError(thing, `it cannot be read (${code})`, "Check that you may read it.");
  }
  return textOf(bytes, thing);
}

export function readStandardInput(door: Door): string {
  let bytes: Uint8Array;
  try {
    bytes = door.readStandardInput();
  } catch (error) {
    const { code = "unknown fault" } = error as NodeJS.ErrnoException;
    throw userError(
      "standard input",
      `it cannot be read (${code})`,
      "Pipe a text into the command, or name a file.",
    );
  }
  return textOf(bytes, "standard input");
}

/** The value of a JSON file. Throws UserError when it is no JSON. */
export function readJsonFile(
  door: Door,
  path: string,
  what: string,
  remedy = "Correct it; `keepwright kitchen ordinary --json` prints one that works.",
): unknown {
  const text = readTextFile(door, path, what);
  try {
    return JSON.parse(text);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw userError(`${what} ${quoted(path)}`, `not valid JSON (${why})`, remedy);
  }
}
