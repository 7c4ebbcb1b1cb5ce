import { PaperError } from "@keepwright/paper";
import type { Finding } from "@keepwright/planner";
import { quoted } from "../userError.js";

/**
 * What can be put right where a page has characters that no font of ours has; undefined for any other error.
 *
 * @param remedy what the person can write in other letters
 */
export function unprintable(
  thing: string,
  error: unknown,
  remedy = "Name the kitchen and its places in Latin or Cyrillic letters.",
): Finding | undefined {
  if (!(error instanceof PaperError) || error.characters.length === 0) return undefined;
  return {
    thing,
    value: `there are no letters to print ${error.characters.map(quoted).join(", ")}`,
    remedy,
  };
}
