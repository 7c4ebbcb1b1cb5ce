import { IntlMessageFormat } from "intl-messageformat";
import type { Message } from "./message.js";

/** Values by the names of their placeholders. */
export type GivenValues = Readonly<Record<string, string | number>>;
export type MessageFormatter = (message: Message, values: GivenValues) => string;

/**
 * Fills the messages of a language in; each is parsed once, when it is first said.
 * @param tag BCP 47 tag of the language.
 * @returns a function that throws an error of the library for a message that is not well formed or lacks a value.
 */
export function messageFormatter(tag: string): MessageFormatter {
  const numbers = new Intl.NumberFormat(tag);
  const plurals = new Intl.PluralRules(tag);
  const formatters = {
    getNumberFormat: () => numbers,
    getPluralRules: () => plurals,
    getDateTimeFormat: (locales?: string | string[], options?: Intl.DateTimeFormatOptions) =>
      new Intl.DateTimeFormat(locales, options),
  };
  const parsed = new Map<
    Message,
    { readonly format: IntlMessageFormat; readonly counts: ReadonlySet<string> }
  >();
  const parse = (message: Message) => {
    // Mark-up has no meaning in a message: “<” is a character like others.
    const format = new IntlMessageFormat(message, tag, undefined, { formatters, ignoreTag: true });
    const made = { format, counts: countsOf(message) };
    parsed.set(message, made);
    return made;
  };
  // The library writes a number in a bare placeholder as a program would; people are told it as their language writes it.
  const written = (name: string, value: string | number, counts: ReadonlySet<string>) =>
    typeof value === "number" && !counts.has(name) ? numbers.format(value) : value;
  return (message, values) => {
    const { format, counts } = parsed.get(message) ?? parse(message);
    const entries = Object.entries(values).map(([name, value]) => [name, written(name, value, counts)]);
    return format.format(Object.fromEntries(entries)) as string;
  };
}

/** Names of the placeholders that a plural form is chosen by. */
const countsOf = (message: Message): ReadonlySet<string> =>
  new Set([...message.matchAll(/\{(\w+), plural,/g)].map(([, name]) => name ?? ""));
