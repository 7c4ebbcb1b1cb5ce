import { slips, slipsForgiven } from "./distance.js";
import { stem, wordsOf } from "./fold.js";
import type { IndexedName, NameIndex } from "./nameIndex.js";

/** How a name was recognised. */
export type MatchedBy =
  | "exact"
  | "word order"
  | "several kinds"
  | "part of a name"
  | "name and more"
  | "spelling";

export interface Match {
  readonly name: IndexedName;
  readonly score: number;
  readonly by: MatchedBy;
}

/**
 * Scores are our own scale of how likely the person meant this kind: 1 is certain. They only rank and divide
 * "take it" (at or above `confident`) from "ask"; nothing is computed from them.
 */
export const scores = {
  exact: 1,
  wordOrder: 0.97,
  severalKinds: 0.6,
  usualOfSeveral: 0.65,
  partOfName: 0.72,
  nameLast: 0.8,
  nameElsewhere: 0.6,
  spelling: 0.95,
};
/** At or above this score one candidate may be taken without asking. */
export const confident = 0.75;

const shared = (name: IndexedName, score: number, by: MatchedBy): Match =>
  name.kinds.length > 1
    ? { name, score: Math.min(score, scores.severalKinds), by: "several kinds" }
    : { name, score, by };

/** Names that are the query itself, in any order, singular or plural. */
export function sameWords(index: NameIndex, query: string, key: string): Match[] {
  const exact = index.byFolded.get(query);
  if (exact) return [shared(exact, scores.exact, "exact")];
  return (index.byKey.get(key) ?? []).map((name) => shared(name, scores.wordOrder, "word order"));
}

const includesAll = (all: readonly string[], some: readonly string[]) =>
  some.every((word) => all.includes(word));

/** One word from between the first and the last of a name tells little of it: "milk" is not half-way to saffron milk caps. */
const isInMidst = (query: readonly string[], name: readonly string[]): boolean =>
  query.length === 1 && name.length > 2 && query[0] !== name[0] && query[0] !== name.at(-1);

/** Names of which the query is a part ("lettuce"), and names that are a part of the query ("organic gala apples"). */
export function partWords(index: NameIndex, query: string): Match[] {
  const queryStems = wordsOf(query).map(stem);
  return index.names.flatMap((name) => {
    const nameStems = name.stems;
    if (nameStems.length > queryStems.length && includesAll(nameStems, queryStems)) {
      if (isInMidst(queryStems, nameStems)) return [];
      return [shared(name, scores.partOfName, "part of a name")];
    }
    if (nameStems.length < queryStems.length && includesAll(queryStems, nameStems)) {
      const last = nameStems.every(
        (word, index) => word === queryStems[queryStems.length - nameStems.length + index],
      );
      const share = nameStems.length / queryStems.length;
      return [
        shared(name, (last ? scores.nameLast : scores.nameElsewhere) - 0.05 * (1 - share), "name and more"),
      ];
    }
    return [];
  });
}

/** Slips between the words of two texts, each word against its best partner; Infinity when a word has none. */
function slipsByWord(queryWords: readonly string[], nameWords: readonly string[]): number {
  if (queryWords.length !== nameWords.length) return Infinity;
  const left = [...nameWords];
  let total = 0;
  for (const word of queryWords) {
    const most = slipsForgiven(word.length);
    const counts = left.map((other) => slips(word, other, most));
    const best = Math.min(...counts);
    if (best > most) return Infinity;
    total += best;
    left.splice(counts.indexOf(best), 1);
  }
  return total;
}

/** In words this short a changed letter more often makes another word ("beef", "beet") than a slip. */
const sameLetters = (one: string, other: string) => [...one].sort().join("") === [...other].sort().join("");

/** Letters that sound the same at the beginning of Spanish words: "sanaoria" is a misspelt "zanahoria". */
const sounds = ["szc", "bv", "gj", "ckq", "yl"];
const soundsAlike = (one: string, other: string): boolean =>
  sounds.some((letters) => letters.includes(one) && letters.includes(other));

/** Names within a few slips of the query, and how many. */
export function misspelt(index: NameIndex, query: string): Match[] {
  const queryWords = wordsOf(query);
  const run = queryWords.join("");
  const queryStem = queryWords.map(stem).join("");
  // A run of words may lose a letter or two; three would let a whole word go.
  const most = Math.min(2, slipsForgiven(run.length));
  return index.names.flatMap((name) => {
    const nameRun = name.run;
    const asRun = nameRun === run ? 0.5 : slips(run, nameRun, most);
    const asStems = slips(queryStem, name.stemRun, most);
    const nearest = Math.min(asRun, asStems);
    const count = Math.min(nearest > most ? Infinity : nearest, slipsByWord(queryWords, name.words));
    if (count === Infinity) return [];
    // Compared by the forms that were nearest: "beef" with the stem of "beets", not with its plural.
    const [own, other] = asStems < asRun ? [queryStem, name.stemRun] : [run, nameRun];
    const letters = Math.max(own.length, other.length);
    const changed = letters <= 4 && own.length === other.length && !sameLetters(own, other);
    const firstLetterKept = run[0] === nameRun[0] || run[1] === nameRun[0];
    // Another first letter is a rare slip, and with one more beside it the words share little: "tortillas" is no misspelt "morillas".
    if (!firstLetterKept && count > 1 && !soundsAlike(run[0]!, nameRun[0]!)) return [];
    return [
      shared(
        name,
        scores.spelling - (0.75 * count) / letters - (firstLetterKept ? 0 : 0.15) - (changed ? 0.1 : 0),
        "spelling",
      ),
    ];
  });
}
