/** Stands in place of a kind where the person said that what a word means is left out: it is no fruit or vegetable. */
export const leftOutAlways = "left out";

/** What the person once answered about words that had to be asked about: by the word, in small letters and without accents, a kind or `leftOutAlways`. */
export type Meant = Readonly<Record<string, string>>;

/** What one word means: a kind or `leftOutAlways`. */
export interface WordMeant {
  /** As it is remembered. */
  readonly word: string;
  readonly means: string;
}
