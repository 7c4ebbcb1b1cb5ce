import { type MessageFormatElement, parse, TYPE } from "@formatjs/icu-messageformat-parser";

/** What the library's own parser finds in a message. */
export interface MessageParts {
  readonly holes: ReadonlySet<string>;
  /** By the placeholder that chooses: the forms written for it. */
  readonly plurals: ReadonlyMap<string, readonly string[]>;
  /** Placeholders and forms of any other sort: none are used. */
  readonly others: readonly string[];
  /** x. */
  readonly texts: readonly string[];
}

/** @throws an error of the parser for a message that is not well formed. */
export function messageParts(message: string): MessageParts {
  const holes = new Set<string>();
  const plurals = new Map<string, readonly string[]>();
  const others: string[] = [];
  const read = (elements: readonly MessageFormatElement[]): string[] => {
    let texts = [""];
    const add = (more: readonly string[]) => {
      texts = texts.flatMap((text) => more.map((end) => text + end));
    };
    for (const element of elements) {
      if (element.type === TYPE.literal) add([element.value]);
      else if (element.type === TYPE.pound) add(["…"]);
      else if (element.type === TYPE.argument) {
        holes.add(element.value);
        add(["…"]);
      } else if (element.type === TYPE.plural && element.offset === 0) {
        holes.add(element.value);
        plurals.set(element.value, Object.keys(element.options));
        add(Object.values(element.options).flatMap((option) => read(option.value)));
      } else others.push(JSON.stringify(element));
    }
    return texts;
  };
  const texts = read(parse(message, { ignoreTag: true, shouldParseSkeletons: true }));
  return { holes, plurals, others, texts };
}

/** Every form of a message as it reads. */
export const messageTexts = (message: string): readonly string[] => messageParts(message).texts;
/** Names of the placeholders, in order of the alphabet. */
export const messageHoles = (message: string): string[] => [...messageParts(message).holes].sort();

/** The names that the types find: those of `Holes` in `packages/handout/src/words/message.ts`, by the same rule. */
export const typedHoles = (message: string): string[] =>
  [
    ...new Set(
      message
        .split("{")
        .slice(1)
        .map((_, index, pieces) => pieces.slice(index).join("{"))
        .flatMap((after) => {
          const inside = after.slice(0, Math.max(0, after.indexOf("}")));
          const [name] = inside.split(", plural,");
          return name && !/[ {}#]/.test(name) ? [name] : [];
        }),
    ),
  ].sort();

/** Plural forms that a language chooses for whole numbers below a million: no count here reaches one. */
export function pluralForms(tag: string): string[] {
  const rules = new Intl.PluralRules(tag);
  const forms = new Set<string>();
  for (let count = 0; count < 1000; count++) forms.add(rules.select(count));
  for (let count = 1000; count < 1_000_000; count += 997) forms.add(rules.select(count));
  return [...forms].sort();
}
