import { findKinds } from "../find.js";
import type { NameGroup } from "../groups.js";
import type { KindNames } from "../kindNames.js";
import { slips, slipsForgiven } from "./distance.js";
import { folded, wordsOf } from "./fold.js";
import type { Named } from "./nameIndex.js";

/** A kind that what was typed so far may become, and the name by which it was found. */
export interface Suggestion {
  readonly id: string;
  readonly name: string;
}

interface KnownName {
  readonly id: string;
  readonly name: string;
  readonly folded: string;
  readonly words: readonly string[];
  readonly language: "en" | "es";
  /** What the kind is mostly called, not one of its other names. */
  readonly usual: boolean;
}

type Names = ReadonlyMap<string, KindNames>;
const known = new WeakMap<Names, readonly KnownName[]>();

function knownNames(kinds: Names): readonly KnownName[] {
  const built =
    known.get(kinds) ??
    [...kinds.values()].flatMap(({ id, names }) =>
      (["en", "es"] as const).flatMap((language) =>
        [names[language].many, names[language].one, ...names[language].also].map((name, index) => ({
          id,
          name,
          folded: folded(name),
          words: wordsOf(name),
          language,
          usual: index < 2,
        })),
      ),
    );
  known.set(kinds, built);
  return built;
}

/** Our own order of likeness, best first; it only ranks. Slips in the spelling come after everything spelt right. */
const ranks = { whole: 0, group: 1, begun: 2, wordBegun: 3, spelling: 4 } as const;
/** A name of the other language stands behind an equal one of the language in use. */
const otherLanguage = 0.5;
/** And a rarer name behind what a kind is mostly called. */
const rarer = 0.25;
const none = Infinity;

/** Words of a name that one word alone may begin: of a rarer one its first and its last. "Milk" is not half-way to saffron milk caps. */
const endWords = ({ words, usual }: KnownName): readonly string[] =>
  usual || words.length < 3 ? words : [words[0]!, words.at(-1)!];

/** Every word typed begins a word of the name, each another one. */
function wordsBegun(typed: readonly string[], words: readonly string[]): boolean {
  const left = [...words];
  return typed.every((word) => {
    const at = left.findIndex((each) => each.startsWith(word));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

/** What a beginning in a later word counts more than one in the first, in slips: less than one of them. */
const laterWord = 0.5;

/** Of so few letters [1] one changed makes the beginning of some other name: slips are forgiven only in a word that is not much longer. */
const short = 4;

/** Fewest slips between what was typed and the beginning of a name or of one of its words. */
function slipsFromStart(typed: string, known: KnownName): number {
  const most = slipsForgiven(typed.length);
  if (most === 0) return none;
  let fewest = most + 1;
  for (const [index, start] of [known.folded, ...endWords(known).slice(1)].entries()) {
    if (typed.length <= short && start.length > short + 1) continue;
    if (start[0] !== typed[0] && start[1] !== typed[0] && start[0] !== typed[1]) continue;
    for (let longer = -1; longer <= 1; longer++) {
      const beginning = start.slice(0, typed.length + longer);
      const count = slips(typed, beginning, most);
      if (count <= most) fewest = Math.min(fewest, count + (index > 0 ? laterWord : 0));
    }
  }
  return fewest > most ? none : fewest;
}

/** What nearly every kind here is, and no name's beginning while nothing but it is typed. */
const fresh = /^fresh /;

function rankOf(typed: string, words: readonly string[], name: KnownName): number {
  if (name.folded === typed) return ranks.whole;
  if (fresh.test(name.folded) && "fresh ".startsWith(typed)) return none;
  if (name.folded.startsWith(typed)) return ranks.begun;
  if (wordsBegun(words, words.length > 1 ? name.words : endWords(name))) return ranks.wordBegun;
  return ranks.spelling + slipsFromStart(typed, name);
}

/** Longer texts are no name of anything; they are not searched. */
const longestTyped = 60;

const noGroups: readonly NameGroup[] = [];
const sought = new WeakMap<Names, Named>();

/** Whole names within a few slips, the first letter too, as the reader of a haul finds them; not what is only a part of a name. */
function misspeltWhole(
  kinds: Names,
  groups: readonly NameGroup[],
  typed: string,
  most: number,
): readonly Suggestion[] {
  const before = sought.get(kinds);
  const named = before?.groups === groups ? before : { commodities: kinds, groups };
  sought.set(kinds, named);
  return findKinds(named, typed)
    .filter(({ by }) => by === "spelling")
    .slice(0, most)
    .map(({ id, name }) => ({ id, name }));
}

export interface SuggestOptions {
  /** The language in use; names of the other are found as well. */
  readonly language?: "en" | "es";
  readonly most?: number;
  /** Words for several kinds, where they are at hand. */
  readonly groups?: readonly NameGroup[];
}

/**
 * Kinds whose names begin with what is typed so far, best first, each once: by any name in English or Spanish, with or without accents, by
 * any word of it, and with slips in the spelling. Where nothing begins so, whole names with slips anywhere, as a haul is read. Needs names only, no figures. Never throws, whatever the text; empty when nothing is near.
 */
export function suggestKinds(
  kinds: Names,
  text: string,
  { language = "en", most = 6, groups = noGroups }: SuggestOptions = {},
): readonly Suggestion[] {
  const typed = folded(text.slice(0, longestTyped + 1));
  if (typed === "" || typed.length > longestTyped) return [];
  const words = typed.split(" ");
  const best = new Map<string, Suggestion & { readonly rank: number }>();
  const offer = (id: string, name: string, rank: number) => {
    const before = best.get(id);
    if (!before || rank < before.rank) best.set(id, { id, name, rank });
  };
  for (const name of knownNames(kinds)) {
    const rank = rankOf(typed, words, name);
    const behind = (name.language === language ? 0 : otherLanguage) + (name.usual ? 0 : rarer);
    if (rank < none) offer(name.id, name.name, rank + behind);
  }
  for (const group of groups.filter(({ word }) => folded(word) === typed)) {
    for (const id of group.kinds)
      if (kinds.has(id)) offer(id, group.word, ranks.group - (id === group.usual ? 0.5 : 0));
  }
  if (best.size === 0) return misspeltWhole(kinds, groups, typed, most);
  return [...best.values()]
    .sort(
      (one, other) =>
        one.rank - other.rank || one.name.length - other.name.length || (one.id < other.id ? -1 : 1),
    )
    .slice(0, most)
    .map(({ id, name }) => ({ id, name }));
}
