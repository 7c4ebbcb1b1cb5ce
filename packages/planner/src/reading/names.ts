import { type Catalogue, confident, findKinds, folded, nameIndex, stemKey } from "@keepwright/catalogue";
import type { FoundName } from "./elements.js";
import { noProduceAt } from "./noProduceWords.js";
import { notKeptNameAt } from "./notKeptWords.js";
import { otherFoodAt } from "./otherFoods.js";
import { stateAt } from "./states.js";
import type { StateChange } from "./stateWords.js";
import type { Token } from "./tokens.js";
import { unitNamed } from "./units.js";

/** A candidate below this is too far off to be worth offering. */
const worthOffering = 0.55;
/** Words of a misspelt name are looked up together up to this many. */
const longestMisspelt = 3;

/** Texts of the windows of words that begin at a token, longest first; words may be joined by hyphens. */
function windows(tokens: readonly Token[], at: number, most: number): { text: string; next: number }[] {
  const found: { text: string; next: number }[] = [];
  let text = "";
  let index = at;
  while (found.length < most && tokens[index]?.kind === "word") {
    text = text === "" ? tokens[index]!.text : `${text} ${tokens[index]!.text}`;
    index++;
    found.unshift({ text, next: index });
    if (tokens[index]?.text === "-" && !tokens[index]!.spaced && !tokens[index + 1]?.spaced) index++;
  }
  return found;
}

function singular(catalogue: Catalogue, kinds: readonly string[], text: string): boolean {
  const names = kinds.length === 1 ? catalogue.commodities.get(kinds[0]!)?.names : undefined;
  const one = folded(text);
  return [names?.en, names?.es].some((set) => set && folded(set.one) === one && folded(set.many) !== one);
}

/** Does it end as a plural does, in both languages, and is no kind's name for one ("asparagus")? */
function plural(catalogue: Catalogue, kinds: readonly string[], text: string): boolean {
  const name = folded(text);
  return (
    name.endsWith("s") &&
    !kinds.some((kind) => {
      const names = catalogue.commodities.get(kind)?.names;
      return [names?.en.one, names?.es.one].some((one) => one !== undefined && folded(one) === name);
    })
  );
}

interface NameFound {
  readonly name: FoundName;
  readonly next: number;
}

function impliedBy(tokens: readonly Token[], at: number, next: number): StateChange[] {
  const found: StateChange[] = [];
  for (let index = at; index < next; index++) {
    const state = stateAt(tokens, index);
    if (state && state.next <= next) found.push(state.change);
  }
  return found;
}

function lookedUp(catalogue: Catalogue, text: string): Omit<FoundName, "implied"> | undefined {
  const index = nameIndex(catalogue);
  const exact = index.byFolded.get(folded(text));
  const same = exact ? [exact] : (index.byKey.get(stemKey(text)) ?? []);
  if (same.length === 0) return undefined;
  const kinds = [...new Set(same.flatMap((name) => name.kinds))];
  const usual = same.find((name) => name.usual !== undefined)?.usual;
  return {
    kinds,
    sure: exact ? 1 : 0.97,
    misspelt: false,
    singular: singular(catalogue, kinds, text),
    plural: plural(catalogue, kinds, text),
    ...(usual !== undefined ? { usual } : {}),
    ...(folded(text).startsWith("baby ") ? { baby: true } : {}),
  };
}

/** A word written as two by many who write lists ("water melon", "egg plant"): the name that both make together. */
function writtenApart(catalogue: Catalogue, tokens: readonly Token[], at: number): NameFound | undefined {
  const [first, second] = [tokens[at], tokens[at + 1]];
  if (first?.kind !== "word" || second?.kind !== "word") return undefined;
  const name = lookedUp(catalogue, `${first.text}${second.text}`);
  return name && { name: { ...name, implied: [] }, next: at + 2 };
}

/** Is the rest of a longer name only a state ("with tops") or a unit that the kind has ("cloves")? */
function restIsSaidElsewhere(
  catalogue: Catalogue,
  tokens: readonly Token[],
  kind: string,
  from: number,
  next: number,
): boolean {
  if (stateAt(tokens, from)?.next === next) return true;
  const unit = next === from + 1 ? unitNamed(tokens[from]!.folded, true) : undefined;
  const units = catalogue.commodities.get(kind)?.household.units ?? [];
  return unit?.of === "household" && units.some((own) => own.name === unit.name);
}

/** "Beets tops on" is beets with their tops: does a state begin where one name ends that a longer name would break? */
const partsAt = (tokens: readonly Token[], end: number, longerEnd: number): boolean =>
  longerEnd > end && (stateAt(tokens, end)?.next ?? 0) > longerEnd;

const noKind: FoundName = {
  kinds: [],
  sure: 1,
  misspelt: false,
  singular: false,
  plural: false,
  implied: [],
};

/**
 * The longest name that begins at a token, spelt as the catalogue has it (number and accents aside). Where the longest
 * differs from a shorter name of the same kind only by a state or a unit, the shorter is taken, and the rest is read as
 * what it is.
 */
export function nameAt(catalogue: Catalogue, tokens: readonly Token[], at: number): NameFound | undefined {
  const found: NameFound[] = windows(tokens, at, nameIndex(catalogue).longestName).flatMap(
    ({ text, next }) => {
      const name = lookedUp(catalogue, text);
      return name ? [{ name: { ...name, implied: impliedBy(tokens, at, next) }, next }] : [];
    },
  );
  const apart = writtenApart(catalogue, tokens, at);
  if (apart && apart.next > (found[0]?.next ?? 0)) found.unshift(apart);
  const other = notKeptNameAt(tokens, at);
  if (other && other.next >= (found[0]?.next ?? 0))
    return { name: { ...noKind, notKept: other.found }, next: other.next };
  const none = noProduceAt(tokens, at) ?? 0;
  if (none > (found[0]?.next ?? 0)) return { name: { ...noKind, notKept: "no produce" }, next: none };
  const food = otherFoodAt(tokens, at) ?? 0;
  if (food > (found[0]?.next ?? 0)) return { name: { ...noKind, noKind: true }, next: food };
  const parted = found.find(({ next }) => found.some((longer) => partsAt(tokens, next, longer.next)));
  if (parted) return parted;
  const longest = found[0];
  const kind = longest?.name.kinds.length === 1 ? longest.name.kinds[0]! : undefined;
  if (!longest || kind === undefined) return longest;
  const shorter = found.find(
    ({ name, next }) =>
      next < longest.next &&
      name.kinds.length === 1 &&
      name.kinds[0] === kind &&
      restIsSaidElsewhere(catalogue, tokens, kind, next, longest.next),
  );
  return shorter ?? longest;
}

/** Does a name that begins here end where another does, and name the same one kind? */
export function sameNameFrom(
  catalogue: Catalogue,
  tokens: readonly Token[],
  at: number,
  other: NameFound,
): boolean {
  const found = nameAt(catalogue, tokens, at);
  return (
    found !== undefined &&
    found.next >= other.next &&
    found.name.kinds.length === 1 &&
    other.name.kinds.length === 1 &&
    found.name.kinds[0] === other.name.kinds[0]
  );
}

type Guessed = Map<string, FoundName | undefined>;

/** Guesses kept from one reading to the next: while a text is typed, all of it but the word being typed was guessed at before. */
const guessed = new WeakMap<Catalogue, Guessed>();
/** So many are kept [1]; then all are let go, which costs one reading. */
const mostGuessed = 5000;

function guessedFor(catalogue: Catalogue): Guessed {
  const kept = guessed.get(catalogue);
  if (kept && kept.size < mostGuessed) return kept;
  const fresh: Guessed = new Map();
  guessed.set(catalogue, fresh);
  return fresh;
}

/** Looks up texts that are no name as they stand, each once. */
export class SpellingGuesses {
  readonly #known: Guessed = new Map();
  /** By the very text, from earlier readings. */
  readonly #before: Guessed;
  /** What the line being read asked about. */
  #asked: Guessed = new Map();
  #ranOut = false;

  constructor(
    private readonly catalogue: Catalogue,
    /** Lookups left; a text of thousands of unknown words is not worth thousands of searches. */
    private left = 400,
  ) {
    this.#before = guessedFor(catalogue);
  }

  /** From here on, what is asked about is another line's. */
  startLine(): void {
    this.#asked = new Map();
  }

  /** What the line asked about, by which it may be taken again; undefined where lookups ran out. */
  askedInLine(): ReadonlyMap<string, FoundName | undefined> | undefined {
    return this.#ranOut ? undefined : this.#asked;
  }

  /** Counts a line read before as if it were read again. False, and nothing counted, where there are not enough lookups left for it. */
  askAgain(asked: ReadonlyMap<string, FoundName | undefined>): boolean {
    const fresh = [...asked].filter(([key]) => !this.#known.has(key));
    if (fresh.length > this.left) return false;
    this.left -= fresh.length;
    for (const [key, name] of fresh) this.#known.set(key, name);
    return true;
  }

  /** The name meant at a token, where its spelling is only near; several kinds when it may be any of them. */
  at(tokens: readonly Token[], at: number, stopsAt: (token: number) => boolean): NameFound | undefined {
    const free = windows(tokens, at, longestMisspelt).filter(({ next }) => {
      for (let index = at; index < next; index++) if (stopsAt(index)) return false;
      return true;
    });
    const guesses = free.flatMap(({ text, next }) => {
      const name = this.guess(text);
      return name ? [{ name, next }] : [];
    });
    return guesses.reduce<(typeof guesses)[number] | undefined>(
      (best, guess) => (!best || guess.name.sure > best.name.sure ? guess : best),
      undefined,
    );
  }

  private guess(text: string): FoundName | undefined {
    const key = folded(text);
    if (!this.#known.has(key)) {
      // Counted whether it is known from an earlier reading or not: the same text always gives the same reading.
      if (this.left <= 0) {
        this.#ranOut = true;
        return undefined;
      }
      this.left -= 1;
      const name = this.#before.has(text) ? this.#before.get(text) : this.lookUp(text);
      this.#before.set(text, name);
      this.#known.set(key, name);
    }
    this.#asked.set(key, this.#known.get(key));
    return this.#known.get(key);
  }

  private lookUp(text: string): FoundName | undefined {
    const near = findKinds(this.catalogue, text).filter(
      (candidate) => candidate.score >= worthOffering && candidate.by !== "name and more",
    );
    const best = near[0];
    const kinds = best && best.score >= confident ? [best.id] : near.map((candidate) => candidate.id);
    return (
      best && {
        kinds,
        sure: best.score,
        misspelt: true,
        singular: false,
        plural: plural(this.catalogue, kinds, text),
        implied: [],
        ...(best.score < confident ? { unsure: true } : {}),
      }
    );
  }
}
