import type { UnitSystem } from "./amounts.js";
import { type LanguageName, taggedLanguage } from "./languages.js";
import { spanishLanguage } from "./spanish.js";
import { englishLanguage, type Language } from "./speaker.js";

/**
 * The same as `loadLanguage`, for programs that have everything at hand and need not wait.
 * @param region ISO 3166 code, or 419 for Latin America, where it is known whose names, dates and numbers are wanted.
 */
export function languageFor(name: LanguageName, units: UnitSystem, region?: string): Language {
  const language = taggedLanguage(name === "es" ? spanishLanguage : englishLanguage, name, units);
  return region === undefined ? language : { ...language, tag: `${name}-${region}` };
}
