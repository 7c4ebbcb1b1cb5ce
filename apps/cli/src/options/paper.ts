import type { UnitSystem } from "@keepwright/handout";
import { type PaperSize, paperSizes } from "@keepwright/paper";
import { quoted, userError } from "../userError.js";

export function paperOption(text: string): PaperSize {
  const paper = paperSizes.find((name) => name === text.trim().toLowerCase());
  if (!paper) throw userError("--paper", quoted(text), `Give one of: ${paperSizes.join(", ")}.`);
  return paper;
}

/** The paper of those who use these units, where none is asked for. */
export const usualPaper = (units: UnitSystem): PaperSize => (units === "us" ? "letter" : "a4");
