import type { NameGroup } from "../groups.js";
import type { KindNames } from "../kindNames.js";
import { folded, stem } from "./fold.js";
import { namesOf } from "./names.js";

/** One name of one or several kinds, ready to be compared. */
export interface IndexedName {
  readonly name: string;
  readonly folded: string;
  readonly key: string;
  readonly words: readonly string[];
  readonly stems: readonly string[];
  /** Words, and stems, run together: to compare spelling without regard to spaces. */
  readonly run: string;
  readonly stemRun: string;
  readonly kinds: readonly string[];
  /** Of several kinds, the one most people mean. */
  readonly usual?: string;
}

/** Kinds by their names, and words for several of them: a catalogue, or names that are there before it. */
export interface Named {
  readonly commodities: ReadonlyMap<string, KindNames>;
  readonly groups: readonly NameGroup[];
}

/** Names of a catalogue by their folded form and by their stems. */
export interface NameIndex {
  readonly names: readonly IndexedName[];
  readonly byFolded: ReadonlyMap<string, IndexedName>;
  readonly byKey: ReadonlyMap<string, readonly IndexedName[]>;
  /** Most words in any name. */
  readonly longestName: number;
}

function collectNames(catalogue: Named): IndexedName[] {
  const byFolded = new Map<string, { name: string; kinds: Set<string>; usual: string | undefined }>();
  const add = (name: string, kinds: readonly string[], usual?: string) => {
    const key = folded(name);
    if (key === "") return;
    const entry = byFolded.get(key) ?? { name, kinds: new Set<string>(), usual };
    for (const kind of kinds) entry.kinds.add(kind);
    byFolded.set(key, entry);
  };
  for (const { word, kinds, usual } of catalogue.groups) {
    const known = kinds.filter((kind) => catalogue.commodities.has(kind));
    add(word, known, usual !== undefined && known.includes(usual) ? usual : undefined);
  }
  for (const commodity of catalogue.commodities.values()) {
    for (const name of namesOf(commodity)) add(name, [commodity.id]);
  }
  return [...byFolded]
    .filter(([, { kinds }]) => kinds.size > 0)
    .map(([key, { name, kinds, usual }]) => {
      const words = key.split(" ");
      const stems = words.map(stem);
      return {
        name,
        folded: key,
        key: [...stems].sort().join(" "),
        words,
        stems,
        run: words.join(""),
        stemRun: stems.join(""),
        kinds: [...kinds],
        ...(usual !== undefined ? { usual } : {}),
      };
    });
}

function build(catalogue: Named): NameIndex {
  const names = collectNames(catalogue);
  const byKey = new Map<string, IndexedName[]>();
  for (const name of names) byKey.set(name.key, [...(byKey.get(name.key) ?? []), name]);
  return {
    names,
    byFolded: new Map(names.map((name) => [name.folded, name])),
    byKey,
    longestName: Math.max(1, ...names.map((name) => name.words.length)),
  };
}

const built = new WeakMap<Named, NameIndex>();

/** The index of a catalogue's names, built once for each catalogue. */
export function nameIndex(catalogue: Named): NameIndex {
  const known = built.get(catalogue);
  if (known) return known;
  const fresh = build(catalogue);
  built.set(catalogue, fresh);
  return fresh;
}
