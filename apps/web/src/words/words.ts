import { englishLanguage, type Language, type Message, sayer } from "@keepwright/handout";
import { createContext, useContext } from "react";
import { englishPage } from "./english.js";

type PageMessages = typeof englishPage;

/** The page's own words in a language: a BCP 47 tag, and a message for every key of the English ones. */
export interface PageLanguage {
  readonly tag: string;
  readonly messages: { readonly [key in keyof PageMessages]: Message };
}

/** All that is said in a language: the page's own words, and the sentences about plans. Each gets the reader's own tag. */
export interface AllWords {
  readonly page: PageLanguage;
  readonly plan: Language;
}

export const englishPageLanguage: PageLanguage = { tag: "en-GB", messages: englishPage };

/** English is at hand from the first. */
export const englishWords: AllWords = { page: englishPageLanguage, plan: englishLanguage };

/** Says the page's words in a language. */
export const pageWords = ({ tag, messages }: PageLanguage) => sayer<PageMessages>(tag, messages);
export type Say = ReturnType<typeof pageWords>;

const WordsContext = createContext(pageWords(englishPageLanguage));

/** The page's words in the language it is shown in. */
export const useWords = (): Say => useContext(WordsContext);
export const WordsProvider = WordsContext.Provider;
