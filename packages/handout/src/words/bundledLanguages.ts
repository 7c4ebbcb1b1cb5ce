import type { UnitSystem } from "./amounts.js";
import { type LanguageName, taggedLanguage } from "./languages.js";
import { spanishLanguage } from "./spanish.js";
import { englishLanguage, type Language } from "./speaker.js";

/** The same as `loadLanguage`, for programs that have everything at hand and need not wait. */
export const languageFor = (name: LanguageName, units: UnitSystem): Language =>
  taggedLanguage(name === "es" ? spanishLanguage : englishLanguage, name, units);
