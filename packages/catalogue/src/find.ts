import { folded, stemKey } from "./find/fold.js";
import {
  confident,
  type Match,
  type MatchedBy,
  misspelt,
  partWords,
  sameWords,
  scores,
} from "./find/match.js";
import { type Named, nameIndex } from "./find/nameIndex.js";

export { confident, type MatchedBy } from "./find/match.js";

/** A kind that a text may name, how likely (0…1), by which of its names, and how that was recognised. */
export interface Candidate {
  readonly id: string;
  readonly score: number;
  readonly name: string;
  readonly by: MatchedBy;
}

/** Longer texts are no name of anything; they are not searched. */
const longestQuery = 120;
/** Candidates of another kind this near to the best make it uncertain. */
const tooNearToCall = 0.08;

/** The best match of each kind, best first, ties by id so that the order never depends on the data's order. */
function ranked(matches: readonly Match[]): Candidate[] {
  const best = new Map<string, Candidate>();
  for (const { name, score, by } of matches) {
    for (const id of name.kinds) {
      const known = best.get(id);
      const own = name.usual === id ? Math.max(score, scores.usualOfSeveral) : score;
      if (!known || own > known.score) best.set(id, { id, score: own, name: name.name, by });
    }
  }
  return [...best.values()].sort((one, other) => other.score - one.score || (one.id < other.id ? -1 : 1));
}

/** Where several kinds are nearly as likely, none of them is taken for granted. */
function withoutFalseConfidence(candidates: Candidate[]): Candidate[] {
  const [first, second] = candidates;
  if (!first || !second || first.score - second.score > tooNearToCall) return candidates;
  return candidates.map((candidate) => ({
    ...candidate,
    score: Math.min(candidate.score, confident - 0.05),
  }));
}

/**
 * Kinds that a text may name, best first: by any name in English or Spanish, singular or plural, with or without
 * accents, its words in any order, and with slips in the spelling. Empty when nothing is near. At most one candidate
 * reaches `confident`; when none does, ask. Never throws, whatever the text.
 */
export function findKinds(catalogue: Named, text: string, most = 12): Candidate[] {
  if (text.length > longestQuery) return [];
  const query = folded(text);
  if (query === "") return [];
  const index = nameIndex(catalogue);
  const same = ranked(sameWords(index, query, stemKey(query)));
  if (same.length > 0) return withoutFalseConfidence(same).slice(0, most);
  const near = ranked([...partWords(index, query), ...misspelt(index, query)]);
  return withoutFalseConfidence(near).slice(0, most);
}

/** The one kind a text surely names, or undefined when there is none or more than one. */
export function findKind(catalogue: Named, text: string): Candidate | undefined {
  const [first] = findKinds(catalogue, text, 1);
  return first && first.score >= confident ? first : undefined;
}

/** The kind that most people mean by a word for several; undefined where the text is none, or means none of them mostly. */
export function usualKind(catalogue: Named, text: string): string | undefined {
  if (text.length > longestQuery) return undefined;
  const query = folded(text);
  const same = sameWords(nameIndex(catalogue), query, stemKey(query));
  return same.find(({ name }) => name.usual !== undefined)?.name.usual;
}
