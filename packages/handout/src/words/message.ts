/**
 * A sentence in ICU MessageFormat: what changes stands in {braces}, and what depends on a number is chosen by
 * `{count, plural, one {…} other {…}}`, in which `#` is that number as the language writes it.
 */
export type Message = string;
export type Messages = Readonly<Record<string, Message>>;

/** A bare name and nothing else; the text of a plural form is none (a test has every message parsed and compared). */
type BareName<Text extends string> = Text extends `${string}${" " | "{" | "}" | "#"}${string}` ? never : Text;

type NameAt<Text extends string> = Text extends `${infer Inside}}${string}`
  ? Inside extends `${infer Name}, plural,${string}`
    ? BareName<Name>
    : BareName<Inside>
  : never;

/** Names of the placeholders of a message, those in its plural forms too. */
export type Holes<Text extends string> = Text extends `${string}{${infer After}`
  ? NameAt<After> | Holes<After>
  : never;

/** Names of the placeholders that a plural form is chosen by: they have to be numbers. */
type Counts<Text extends string> = Text extends `${string}{${infer After}`
  ? (After extends `${infer Name}, plural,${string}` ? BareName<Name> : never) | Counts<After>
  : never;

/** What has to be given to say a message: text as it is, numbers written as the language writes them. */
export type Values<Text extends string> = [Holes<Text>] extends [never]
  ? []
  : [values: { readonly [name in Holes<Text>]: name extends Counts<Text> ? number : string | number }];
