import { quoted, userError } from "../userError.js";
import type { Door } from "./door.js";

/** How every PDF begins. */
const beginning = "%PDF-";

/** Throws UserError where a PDF may not be written: over a folder, or over a file that is something else. */
export function mayWritePdf(door: Door, path: string): void {
  const thing = `--out ${quoted(path)}`;
  const found = door.look(path);
  if (found === "folder") throw userError(thing, "this is a folder", "Name a file inside it: sheet.pdf.");
  if (found === "nothing") return;
  const first = new TextDecoder("latin1").decode(door.readFile(path).subarray(0, beginning.length));
  if (first !== beginning) {
    throw userError(
      thing,
      "a file of that name is there and is no PDF",
      "Choose another name, so that it is not lost.",
    );
  }
}

/** Writes a PDF. Throws UserError naming the path where that cannot be done. */
export function writePdf(door: Door, path: string, bytes: Uint8Array): void {
  try {
    door.writeFile(path, bytes);
  } catch (error) {
    const { code = "unknown fault" } = error as NodeJS.ErrnoException;
    throw userError(
      `--out ${quoted(path)}`,
      `it cannot be written (${code})`,
      "Check the folder, and that you may write there.",
    );
  }
}
