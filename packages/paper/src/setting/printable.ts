import { PaperError } from "./paperError.js";
import type { Letters } from "./typesetter.js";

/** Every text within data. */
function textsOf(data: unknown): string[] {
  if (typeof data === "string") return [data];
  return typeof data === "object" && data !== null ? Object.values(data).flatMap(textsOf) : [];
}

/**
 * Throws PaperError naming the characters that no font here has. Typst itself prints an empty box for them and says nothing unless PDF/UA is
 * asked for, which it cannot be in a browser.
 */
export function mustBePrintable(letters: Letters, data: unknown): void {
  const missing = letters.missingFrom(textsOf(data).join(" "));
  if (missing.length === 0) return;
  throw new PaperError(`There are no letters to print ${missing.join(", ")}`, missing);
}
