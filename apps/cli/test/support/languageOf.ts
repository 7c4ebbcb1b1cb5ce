import { bundledGuidance, catalogue } from "@keepwright/catalogue";
import { englishLanguage, spanishLanguage } from "@keepwright/handout";
import { messageTexts } from "../../../../packages/handout/test/support/messageParts.js";
import { guidanceTexts } from "../../../../scripts/lib/readingLevel.mjs";

export const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}+/gu) ?? [];

/** Common English words that are no Spanish ones. */
const functionWords = `the and of with until day days is are was were it its be been to in for from on at by as or not this
  that these those will would should can may than then when where what which who why how they them their there here your
  you if but into before after about more less least most each every other others all any some nothing only once too very
  while week weeks month months year today tomorrow keep eat put move leave throw away wrap bag box drawer shelf door
  counter cupboard refrigerator kitchen place room people person portion portions half open closed ripe`;

const spanishWords = new Set([
  ...Object.values(spanishLanguage.messages).flatMap((message) => messageTexts(message).flatMap(wordsOf)),
  ...[...catalogue().commodities.values()].flatMap((kind) =>
    [kind.names.es.one, kind.names.es.many, ...kind.names.es.also].flatMap(wordsOf),
  ),
  ...[...bundledGuidance("es").values()].flatMap(({ words }) => guidanceTexts(words).flatMap(wordsOf)),
]);

/** Every word of the English messages and names of kinds that no Spanish one has, and the common ones. */
const englishWords = new Set(
  [
    ...wordsOf(functionWords),
    ...Object.values(englishLanguage.messages).flatMap((message) => messageTexts(message).flatMap(wordsOf)),
    ...[...catalogue().commodities.values()].flatMap(({ names: { en } }) =>
      [en.one, en.many, ...en.also].flatMap(wordsOf),
    ),
  ].filter((word) => !spanishWords.has(word)),
);

/** Words of a text that are English and not Spanish. */
export const englishIn = (text: string): string[] => [
  ...new Set(wordsOf(text).filter((word) => englishWords.has(word))),
];

/** Keys of messages that stand in a text bare. */
export const keysIn = (text: string): string[] =>
  Object.keys(englishLanguage.messages).filter((key) => key.includes(".") && text.includes(key));

/** A printed text as sentences: wrapped lines joined, each item and heading one of its own. */
export const printedSentences = (text: string): string[] =>
  text
    .replace(/\n\s*\n/g, "\n- ")
    .split(/\n\s*- |\n(?=\p{Lu}{2})/u)
    .map((part) => part.replace(/\s*\n\s*/g, " ").trim())
    .filter((part) => /\p{L}/u.test(part))
    .map((part) => (/[.!?:]$/.test(part) ? part : `${part}.`));
