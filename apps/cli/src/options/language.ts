import { catalogue } from "@keepwright/catalogue";
import {
  type HandoutContext,
  handoutContext,
  type LanguageName,
  languageFor,
  languageNames,
  type UnitSystem,
} from "@keepwright/handout";
import type { Command } from "commander";
import { quoted, userError } from "../userError.js";

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

/** Options that say how an answer is told. */
export interface TellingOptions {
  readonly units: UnitSystem;
  readonly language: LanguageName;
}

/** The context of an answer in the language and units asked for. */
export const contextFor = ({ units, language }: TellingOptions): HandoutContext =>
  handoutContext(catalogue(), { units, language: languageFor(language, units) });
