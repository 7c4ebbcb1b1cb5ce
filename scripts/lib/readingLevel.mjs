import { syllable } from "syllable";

const sentencesOf = (text) => text.split(/(?<=[.!?])\s+/u).filter((sentence) => /\p{L}/u.test(sentence));
const wordsOf = (text) => text.match(/[\p{L}’'-]+/gu) ?? [];

/** Strong vowels stand alone; a weak one (i, u, y at the end) joins its neighbour unless it bears the accent. */
export function spanishSyllables(word) {
  const plain = word
    .toLowerCase()
    .replace(/qu(?=[eéií])/g, "q")
    .replace(/gu(?=[eéií])/g, "g")
    .replace(/y$/, "i");
  const groups = plain.match(/[aeiouáéíóúü]+/g) ?? [];
  const inGroup = (group) => {
    let count = 1;
    for (let index = 1; index < group.length; index += 1) {
      const [before, here] = [group[index - 1], group[index]];
      const strong = (vowel) => /[aeoáéóíú]/.test(vowel);
      if (strong(before) && strong(here)) count += 1;
    }
    return count;
  };
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + inGroup(group), 0),
  );
}

function ratios(texts, count) {
  const sentences = texts.flatMap(sentencesOf);
  const words = sentences.flatMap(wordsOf);
  const syllables = words.reduce((sum, word) => sum + count(word), 0);
  return { perSentence: words.length / sentences.length, perWord: syllables / words.length };
}

/** US school grade of English sentences: Kincaid et al. 1975, 0.39 words a sentence + 11.8 syllables a word − 15.59. */
export function englishGrade(texts) {
  const { perSentence, perWord } = ratios(texts, syllable);
  return 0.39 * perSentence + 11.8 * perWord - 15.59;
}

/** Ease of Spanish sentences, 0 to 100: Fernández Huerta 1959, 206.84 − 60 syllables a word − 1.02 words a sentence. */
export function spanishEase(texts) {
  const { perSentence, perWord } = ratios(texts, spanishSyllables);
  return 206.84 - 60 * perWord - 1.02 * perSentence;
}

/** Every sentence of a kind's guidance in one language. */
export const guidanceTexts = (words) => [
  ...words.ripe,
  ...words.going,
  ...words.discard,
  ...words.prepare.flatMap((each) => [each.do, each.why]),
  ...words.trimmings,
  ...words.save,
  ...words.hazards,
];
