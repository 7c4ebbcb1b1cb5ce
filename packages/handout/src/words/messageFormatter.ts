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
  const pieces = new Map<Message, readonly string[] | undefined>();
  /** A message of words and bare placeholders, which most are, without the library; undefined where it takes more. */
  const filled = (message: Message, values: GivenValues): string | undefined => {
    if (!pieces.has(message)) pieces.set(message, piecesOf(message));
    const parts = pieces.get(message);
    let text = "";
    for (const [index, part] of (parts ?? []).entries()) {
      const value = index % 2 === 0 ? part : values[part];
      if (typeof value !== "string" && typeof value !== "number") return undefined;
      text += typeof value === "number" ? numbers.format(value) : value;
    }
    return parts && text;
  };
  return (message, values) => {
    const simple = filled(message, values);
    if (simple !== undefined) return simple;
    const { format, counts } = parsed.get(message) ?? parse(message);
    const entries = Object.entries(values).map(([name, value]) => [name, written(name, value, counts)]);
    return format.format(Object.fromEntries(entries)) as string;
  };
}

/** Words and names of bare placeholders in turn, words first; undefined for a message with anything else in it, quoting among it. */
function piecesOf(message: Message): readonly string[] | undefined {
  const parts = message.split(/\{(\w+)\}/);
  const plain = parts.every((part, index) => index % 2 === 1 || !/[{}]|''|'[<>]|'$/.test(part));
  return plain ? parts : undefined;
}

/** Names of the placeholders that a plural form is chosen by. */
const countsOf = (message: Message): ReadonlySet<string> =>
  new Set([...message.matchAll(/\{(\w+), plural,/g)].map(([, name]) => name ?? ""));
