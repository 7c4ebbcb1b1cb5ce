import type { KindNames } from "../kindNames.js";
import { slips, slipsForgiven } from "./distance.js";
import { folded } from "./fold.js";

/** A kind that what was typed so far may become, and the name by which it was found. */
export interface Suggestion {
  readonly id: string;
  readonly name: string;
}

interface KnownName extends Suggestion {
  readonly folded: string;
  readonly language: "en" | "es";
  /** What the kind is mostly called, not one of its other names. */
  readonly usual: boolean;
}

/** How well a name fits, least is best: our own scale, which only ranks. */
const fits = { whole: 0, beginning: 1, word: 2, misspelt: 3 } as const;
/** A name of the other language stands behind an equal one of the language in use. */
const otherLanguage = 0.5;
/** And a rarer name behind what a kind is mostly called. */
const rarer = 0.25;
const longestQuery = 60;

function known(kinds: Iterable<KindNames>): readonly KnownName[] {
  const names: KnownName[] = [];
  for (const { id, names: own } of kinds)
    for (const language of ["en", "es"] as const)
      for (const [index, name] of [own[language].many, own[language].one, ...own[language].also].entries())
        names.push({ id, name, folded: folded(name), language, usual: index < 2 });
  return names;
}

const prepared = new WeakMap<ReadonlyMap<string, KindNames>, readonly KnownName[]>();

/** Fewest slips between what was typed and the beginning of a name; more than `most` counts as `most + 1`. */
function slipsAtStart(query: string, name: string, most: number): number {
  let least = most + 1;
  for (const length of [query.length, query.length - 1, query.length + 1])
    least = Math.min(least, slips(query, name.slice(0, length), most));
  return least;
}

function fit(query: string, name: string): number | undefined {
  if (name === query) return fits.whole;
  if (name.startsWith(query)) return fits.beginning;
  return name.includes(` ${query}`) ? fits.word : undefined;
}

function misspeltFit(query: string, name: string): number | undefined {
  const most = Math.min(2, slipsForgiven(query.length));
  if (most === 0) return undefined;
  const count = slipsAtStart(query, name, most);
  return count <= most ? fits.misspelt + count : undefined;
}

/**
 * Kinds that what has been typed so far may become, best first, each once: names in either language that begin with it, then
 * names with a word that does, then, where that gives too few, names that begin almost like it. Never throws.
 */
export function suggestKinds(
  kinds: ReadonlyMap<string, KindNames>,
  text: string,
  { language = "en", most = 6 }: { readonly language?: "en" | "es"; readonly most?: number } = {},
): readonly Suggestion[] {
  const query = folded(text.slice(0, longestQuery));
  if (query === "") return [];
  let names = prepared.get(kinds);
  if (!names) {
    names = known(kinds.values());
    prepared.set(kinds, names);
  }
  const best = new Map<string, { readonly name: KnownName; readonly score: number }>();
  const rank = (measure: typeof fit) => {
    for (const name of names) {
      const own = measure(query, name.folded);
      if (own === undefined) continue;
      const score = own + (name.language === language ? 0 : otherLanguage) + (name.usual ? 0 : rarer);
      const before = best.get(name.id);
      if (!before || score < before.score) best.set(name.id, { name, score });
    }
  };
  rank(fit);
  if (best.size < most) rank((text, name) => fit(text, name) ?? misspeltFit(text, name));
  return [...best.values()]
    .sort(
      (one, other) =>
        one.score - other.score ||
        one.name.folded.length - other.name.folded.length ||
        (one.name.id < other.name.id ? -1 : 1),
    )
    .slice(0, most)
    .map(({ name: { id, name } }) => ({ id, name }));
}
