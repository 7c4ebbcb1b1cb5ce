import type { Language, UnitSystem } from "@keepwright/handout";
import { englishLanguage, spanishLanguage } from "@keepwright/handout";
import { type PaperSize, paperSizes } from "@keepwright/paper";
import { quoted, userError } from "../userError.js";

export function paperOption(text: string): PaperSize {
  const paper = paperSizes.find((name) => name === text.trim().toLowerCase());
  if (!paper) throw userError("--paper", quoted(text), `Give one of: ${paperSizes.join(", ")}.`);
  return paper;
}

/** The paper of those who use these units, where none is asked for. */
export const usualPaper = (units: UnitSystem): PaperSize => (units === "us" ? "letter" : "a4");

export const languageNames = ["en", "es"] as const;
export type LanguageName = (typeof languageNames)[number];

export function languageOption(text: string): LanguageName {
  const language = languageNames.find((name) => name === text.trim().toLowerCase());
  if (!language) throw userError("--language", quoted(text), `Give one of: ${languageNames.join(", ")}.`);
  return language;
}

/** Words of a language, with dates and numbers as the units' readers are used to. */
export function languageFor(name: LanguageName, units: UnitSystem): Language {
  if (name === "es") return { ...spanishLanguage, tag: units === "us" ? "es-US" : "es-419" };
  return { ...englishLanguage, tag: units === "us" ? "en-US" : "en-GB" };
}
