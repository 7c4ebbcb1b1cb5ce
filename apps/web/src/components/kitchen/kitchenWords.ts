import { sayer } from "@keepwright/handout";
import { useMemo } from "react";
import { useDesk } from "../../behaviour/desk.js";
import type { LanguageKey } from "../../state/language.js";
import { kitchenQuestionsEnglish } from "../../words/english/kitchenQuestions.js";
import { kitchenQuestionsSpanish } from "../../words/spanish/kitchenQuestions.js";

type KitchenMessages = typeof kitchenQuestionsEnglish;
type Messages = { readonly [key in keyof KitchenMessages]: string };

const messages: Readonly<Record<LanguageKey, Messages>> = {
  en: kitchenQuestionsEnglish,
  es: kitchenQuestionsSpanish,
};

const kitchenWords = (language: LanguageKey) => sayer<KitchenMessages>(language, messages[language]);
export type KitchenSay = ReturnType<typeof kitchenWords>;

/** The words of this screen, in the language of the page. They come with the screen, so that the first one is there sooner. */
export function useKitchenWords(): KitchenSay {
  const { language } = useDesk();
  return useMemo(() => kitchenWords(language), [language]);
}
