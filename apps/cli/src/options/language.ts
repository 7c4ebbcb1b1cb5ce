import { catalogue } from "@keepwright/catalogue";
import {
  englishLanguage,
  type HandoutContext,
  handoutContext,
  type Language,
  spanishLanguage,
  type UnitSystem,
} from "@keepwright/handout";
import type { Command } from "commander";
import { quoted, userError } from "../userError.js";

export const languageNames = ["en", "es"] as const;
export type LanguageName = (typeof languageNames)[number];

function languageOption(text: string): LanguageName {
  const language = languageNames.find((name) => name === text.trim().toLowerCase());
  if (!language) throw userError("--language", quoted(text), `Give one of: ${languageNames.join(", ")}.`);
  return language;
}

/** Gives a command the option of the language it answers in. */
export const withLanguageOption = (command: Command): Command =>
  command.option(
    "-l, --language <language>",
    "language of the answer: en (English) or es (Spanish)",
    languageOption,
    "en",
  );

/** Words of a language, with dates and numbers as the units' readers are used to. */
export function languageFor(name: LanguageName, units: UnitSystem): Language {
  if (name === "es") return { ...spanishLanguage, tag: units === "us" ? "es-US" : "es-419" };
  return { ...englishLanguage, tag: units === "us" ? "en-US" : "en-GB" };
}

/** Options that say how an answer is told. */
export interface TellingOptions {
  readonly units: UnitSystem;
  readonly language: LanguageName;
}

/** The context of an answer in the language and units asked for. */
export const contextFor = ({ units, language }: TellingOptions): HandoutContext =>
  handoutContext(catalogue(), { units, language: languageFor(language, units) });
