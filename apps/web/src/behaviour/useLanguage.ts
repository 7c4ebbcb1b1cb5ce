import { englishLanguage, type Language } from "@keepwright/handout";
import { useEffect, useMemo } from "react";
import { type LanguageKey, languageFor } from "../state/language.js";
import type { PlannerState } from "../state/plannerState.js";
import { tagFor } from "../state/region.js";
import { spanishPage } from "../words/spanish.js";
import { englishPageLanguage, pageWords, type Say } from "../words/words.js";

const pageLanguages = { en: englishPageLanguage, es: spanishPage } as const;

/** What sentences about plans are spoken in; until all of them are there in a language, English. */
const planLanguages = {
  en: { key: "en", language: englishLanguage },
  es: { key: "en", language: englishLanguage },
} as const;

interface Spoken {
  readonly language: LanguageKey;
  /** BCP 47 tag by which the page writes dates and numbers. */
  readonly tag: string;
  readonly say: Say;
  /** For the sentences about plans, with dates and numbers as the region writes them. */
  readonly spoken: Language;
}

/** The language the page is shown in, and its words; the document says which it is. */
export function useLanguage({ language: choice, region }: Pick<PlannerState, "language" | "region">): Spoken {
  const language = languageFor(choice, navigator.languages);
  useEffect(() => {
    document.documentElement.lang = language;
  }, [language]);
  return useMemo(() => {
    const tagOf = (key: LanguageKey) => tagFor(key, region, navigator.languages);
    const tag = tagOf(language);
    const plan = planLanguages[language];
    return {
      language,
      tag,
      say: pageWords({ ...pageLanguages[language], tag }),
      spoken: { ...plan.language, tag: tagOf(plan.key) },
    };
  }, [language, region]);
}
