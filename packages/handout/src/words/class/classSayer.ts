import type { LanguageName } from "../languages.js";
import type { Message, Values } from "../message.js";
import { sayer } from "../speaker.js";
import { classEnglish } from "./english.js";
import { classSpanish } from "./spanish.js";

export type ClassWords = typeof classEnglish;
export type ClassKey = keyof ClassWords;

/** Says a sentence of a class kit. */
export type ClassSay = <Key extends ClassKey>(key: Key, ...values: Values<ClassWords[Key]>) => string;

/** The words of class kits by language. They are apart from the others so that the page in a browser need not carry them. */
export const classWords: Readonly<Record<LanguageName, Readonly<Record<ClassKey, Message>>>> = {
  en: classEnglish,
  es: classSpanish,
};

/** Says the words of class kits in a language, with numbers as the tag's readers write them. */
export const classSayer = (language: LanguageName, tag: string): ClassSay =>
  sayer<ClassWords>(tag, classWords[language]);
