import { useEffect, useMemo } from "react";
import { type LanguageChoice, type LanguageKey, languageFor } from "../state/language.js";
import { spanishPage } from "../words/spanish.js";
import { englishPageLanguage, pageWords, type Say } from "../words/words.js";

const pageLanguages = { en: englishPageLanguage, es: spanishPage } as const;

/** The language the page is shown in, and its words; the document says which it is. */
export function useLanguage(choice: LanguageChoice): { readonly language: LanguageKey; readonly say: Say } {
  const language = languageFor(choice, navigator.languages);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  const say = useMemo(() => pageWords(pageLanguages[language]), [language]);
  return { language, say };
}
