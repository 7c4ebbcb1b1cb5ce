/** Lower case, no accents, everything but letters and digits as single spaces. "Ají (picante)" becomes "aji picante". */
export const folded = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}+/gu, "")
    .toLowerCase()
    .replace(/['’‘`´]/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();

/** Words of a folded text. */
export const wordsOf = (text: string): string[] => {
  const whole = folded(text);
  return whole === "" ? [] : whole.split(" ");
};

/**
 * One form for singular and plural of a word, English or Spanish. It need not be a word itself: it serves only to
 * compare, so the rules may be blunt as long as they never bring two kinds together (see test/find/fold.test.ts).
 */
export function stem(word: string): string {
  if (word.length <= 3 || /(?:ss|us)$/.test(word)) return word;
  if (word.endsWith("ies") && word.length > 4) return `${word.slice(0, -3)}y`;
  if (/(?:oes|ches|shes|xes|sses|nes|res|les|des|yes)$/.test(word)) return withoutFinalE(word.slice(0, -1));
  return withoutFinalE(word.endsWith("s") ? word.slice(0, -1) : word);
}

const withoutFinalE = (word: string): string =>
  word.length > 4 && word.endsWith("e") ? word.slice(0, -1) : word;

/** The words of a text as stems in alphabetical order, so that order and number do not matter. */
export const stemKey = (text: string): string => wordsOf(text).map(stem).sort().join(" ");
