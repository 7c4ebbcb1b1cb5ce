import type { UnitSystem } from "./amounts.js";
import { englishLanguage, type Language } from "./speaker.js";

/** Languages that everything is said in. */
export const languageNames = ["en", "es"] as const;
export type LanguageName = (typeof languageNames)[number];

/** BCP 47 tags: dates and numbers as the readers of these units are used to. */
const tags: Readonly<Record<LanguageName, Readonly<Record<UnitSystem, string>>>> = {
  en: { metric: "en-GB", us: "en-US" },
  es: { metric: "es-419", us: "es-US" },
};

/** A language with the tag that goes with the units. */
export const taggedLanguage = (language: Language, name: LanguageName, units: UnitSystem): Language => ({
  ...language,
  tag: tags[name][units],
});

/**
 * Words of a language, for programs that load them when they are first wanted: English is at hand, every other language
 * is a part of its own.
 */
export async function loadLanguage(name: LanguageName, units: UnitSystem): Promise<Language> {
  if (name === "en") return taggedLanguage(englishLanguage, name, units);
  const { spanishLanguage } = await import("./spanish.js");
  return taggedLanguage(spanishLanguage, name, units);
}
