import { catalogue } from "@keepwright/catalogue";
import {
  type HandoutContext,
  handoutContext,
  type LanguageName,
  languageFor,
  languageNames,
  type UnitSystem,
} from "@keepwright/handout";
import { type Command, Option } from "commander";
import { quoted, userError } from "../userError.js";

/** A language, and the region whose words, dates and numbers are wanted where one is told: an ISO 3166 code, or 419 for Latin America. */
export interface AskedLanguage {
  readonly name: LanguageName;
  readonly region?: string;
}

/** Regions by their English names: a code that has none is no region. */
const regions = new Intl.DisplayNames(["en"], { type: "region", fallback: "none" });

/** A language as it is written, “es” or “es-MX”; undefined where it is neither. */
export function askedLanguage(text: string): AskedLanguage | undefined {
  const [, written, code] = /^([a-z]{2})(?:-([a-z]{2}|419))?$/i.exec(text.trim()) ?? [];
  const name = languageNames.find((one) => one === written?.toLowerCase());
  if (!name || code === undefined) return name && { name };
  const region = code.toUpperCase();
  return regions.of(region) === undefined ? undefined : { name, region };
}

function languageOption(text: string): AskedLanguage {
  const asked = askedLanguage(text);
  if (!asked)
    throw userError(
      "--language",
      quoted(text),
      `Give one of: ${languageNames.join(", ")}. A region may stand behind it, for its words: es-MX, en-US.`,
    );
  return asked;
}

const english: AskedLanguage = { name: "en" };

/** Gives a command the option of the language it answers in. */
export const withLanguageOption = (command: Command): Command =>
  command.addOption(
    new Option(
      "-l, --language <language>",
      "language of the answer: en (English) or es (Spanish); with a region (es-MX, en-US) in the words used there",
    )
      .argParser(languageOption)
      .default(english, "en"),
  );

/** Options that say how an answer is told. */
export interface TellingOptions {
  readonly units: UnitSystem;
  readonly language: AskedLanguage;
}

/** The context of an answer in the language and units asked for. */
export const contextFor = ({ units, language: { name, region } }: TellingOptions): HandoutContext =>
  handoutContext(catalogue(), { units, language: languageFor(name, units, region) });
