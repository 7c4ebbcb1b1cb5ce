import { english } from "./english.js";
import { forReaders } from "./forReaders.js";
import type { Message, Messages, Values } from "./message.js";
import { messageFormatter } from "./messageFormatter.js";

export type English = typeof english;
export type MessageKey = keyof English;

/** A language: a BCP 47 tag, and a message for every key of the English catalogue. */
export interface Language {
  readonly tag: string;
  readonly messages: Readonly<Record<MessageKey, Message>>;
}

export const englishLanguage: Language = { tag: "en-GB", messages: english };

export interface Speaker {
  readonly tag: string;
  say<Key extends MessageKey>(key: Key, ...values: Values<English[Key]>): string;
  number(value: number, options?: Intl.NumberFormatOptions): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
  /** "a, b or c". */
  choices(items: readonly string[]): string;
  /** First letter as at the start of a sentence. */
  capital(text: string): string;
}

/** Says any set of messages in a language: the handout's own, or those of a page of its own. */
export function sayer<Own extends Messages>(tag: string, messages: { readonly [key in keyof Own]: Message }) {
  const format = messageFormatter(tag);
  const told = new Map<string, Message>();
  return <Key extends keyof Own & string>(key: Key, ...values: Values<Own[Key]>): string => {
    // A language of which only a part is written must not fall back on another unseen.
    if (messages[key] === undefined) throw new Error(`There are no words for “${key}” in ${tag}.`);
    const message = told.get(key) ?? forReaders(tag, messages[key]);
    told.set(key, message);
    return format(message, values[0] ?? {});
  };
}

/** Puts a language to work: sentences, numbers and lists as it writes them. */
export function speaker(language: Language = englishLanguage): Speaker {
  const and = new Intl.ListFormat(language.tag, { type: "conjunction" });
  const or = new Intl.ListFormat(language.tag, { type: "disjunction" });
  // Making one costs far more than writing a number by it, and few sorts are ever asked for.
  const formats = new Map<string, Intl.NumberFormat>();
  const number = (value: number, options: Intl.NumberFormatOptions = {}) => {
    const sort = JSON.stringify(options);
    const format = formats.get(sort) ?? new Intl.NumberFormat(language.tag, options);
    formats.set(sort, format);
    return format.format(value);
  };
  return {
    tag: language.tag,
    number,
    say: sayer<English>(language.tag, language.messages),
    list: (items) => and.format(items),
    choices: (items) => or.format(items),
    capital: (words) => words.charAt(0).toLocaleUpperCase(language.tag) + words.slice(1),
  };
}
