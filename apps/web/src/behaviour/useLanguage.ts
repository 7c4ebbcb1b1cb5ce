import type { Language } from "@keepwright/handout";
import { useEffect, useMemo, useState } from "react";
import { type LanguageKey, languageFor } from "../state/language.js";
import type { PlannerState } from "../state/plannerState.js";
import { tagFor } from "../state/region.js";
import { type AllWords, englishWords, pageWords, type Say } from "../words/words.js";

interface Spoken {
  readonly language: LanguageKey;
  /** BCP 47 tag by which the page writes dates and numbers. */
  readonly tag: string;
  readonly say: Say;
  /** For the sentences about plans, with dates and numbers as the region writes them. */
  readonly spoken: Language;
}

type Words = { readonly [key in LanguageKey]?: AllWords };

/** Languages that are not at hand from the first, and how they are fetched. */
const fetched: { readonly [key in LanguageKey]?: () => Promise<AllWords> } = {
  es: () => import("../words/spanishWords.js").then(({ spanishWords }) => spanishWords()),
};

/** Fetches the words of a language where they are not at hand; where they cannot be had, English stands in. */
function useWordsOf(language: LanguageKey): Words {
  const [words, setWords] = useState<Words>({ en: englishWords });
  useEffect(() => {
    if (words[language]) return;
    let wanted = true;
    const keep = (all: AllWords) => wanted && setWords((before) => ({ ...before, [language]: all }));
    fetched[language]?.().then(keep, () => keep(englishWords));
    return () => {
      wanted = false;
    };
  }, [language, words]);
  return words;
}

/**
 * The language the page is shown in, and its words; the document says which it is. While another language is on its way
 * the one before stays; undefined while the very first is.
 */
export function useLanguage({
  language: choice,
  region,
}: Pick<PlannerState, "language" | "region">): Spoken | undefined {
  const wanted = languageFor(choice, navigator.languages);
  const words = useWordsOf(wanted);
  const [before, setBefore] = useState<LanguageKey | undefined>(undefined);
  const language = words[wanted] ? wanted : before;
  useEffect(() => {
    if (language === undefined) return;
    setBefore(language);
    document.documentElement.lang = language;
  }, [language]);
  const all = language && words[language];
  return useMemo(() => {
    if (language === undefined || all === undefined) return undefined;
    const tag = tagFor(language, region, navigator.languages);
    return { language, tag, say: pageWords({ ...all.page, tag }), spoken: { ...all.plan, tag } };
  }, [language, all, region]);
}
