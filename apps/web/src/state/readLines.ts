import type { Catalogue } from "@keepwright/catalogue";
import { type Lot, type NotUnderstood, readHaul, type UnderstoodLot } from "@keepwright/planner";
import { type Correction, type Corrections, corrected, correctionKey, enteredMass } from "./corrections.js";
import { leftOutAlways, type Meant } from "./meant.js";
import type { ReadLine } from "./readLots.js";
import { rememberedWord, wordAsked } from "./wordAsked.js";

/** Longest words looked through for a kind: beyond it they are not the name of one thing. */
const longestName = 80;

/** The kind that the words name when every figure and sign is left out. */
function likelyKind(item: NotUnderstood, catalogue: Catalogue): string | undefined {
  if (item.typed.length > longestName || !item.questions.some(({ ask }) => ask === "how much"))
    return undefined;
  const words = item.typed.replace(/[^\p{L}\s]/gu, " ");
  const found = readHaul(words, catalogue).items.find((each) => each.kind === "lot");
  return found?.kind === "lot" ? found.lot.commodity : undefined;
}

/**
 * What the words tell with the name of a kind in place of the word that was asked about, so that the amount and the state beside it are read as
 * beside any name; undefined where they do not tell it surely.
 */
function readAs(item: NotUnderstood, kind: string, catalogue: Catalogue): Omit<Lot, "id"> | undefined {
  const word = wordAsked(item);
  const names = catalogue.commodities.get(kind)?.names;
  if (word === undefined || !names) return undefined;
  const { en, es } = names;
  for (const name of [en.many, en.one, es.many, es.one, ...en.also, ...es.also]) {
    const [found, more] = readHaul(
      item.typed.replace(word, () => name),
      catalogue,
    ).items;
    const sure = found?.kind === "lot" && found.questions.length === 0 && !more;
    if (sure && found.lot.commodity === kind) return { ...found.lot, typed: item.typed };
  }
  return undefined;
}

function answered(
  item: NotUnderstood,
  correction: Correction | undefined,
  said: string | undefined,
  { id, catalogue }: { readonly id: string; readonly catalogue: Catalogue },
): Lot | undefined {
  const commodity = correction?.commodity ?? said;
  if (!commodity) return undefined;
  const mass = enteredMass(correction?.amount, catalogue.commodities.get(commodity));
  const read = readAs(item, commodity, catalogue);
  if (!mass && !read) return undefined;
  const { leftOut: _, amount: __, ...rest } = correction ?? {};
  const usual = { form: "whole", tops: false, washed: false, extraDays: 0, grams: 0 } as const;
  const { pieces, ...bare }: Omit<Lot, "id" | "commodity"> = read ?? usual;
  return {
    ...bare,
    typed: item.typed,
    ...rest,
    id,
    commodity,
    ...(mass ?? (pieces !== undefined && { pieces })),
  };
}

/** Lines as they were made last, by what they were read as: what did not change stays one and the same, and is not drawn anew. */
const made = new WeakMap<UnderstoodLot | NotUnderstood, ReadLine>();

/** What the person said before of the word that is asked about, where they say nothing else here. */
function recalledOf(
  item: UnderstoodLot | NotUnderstood,
  correction: Correction | undefined,
  meant: Meant,
  catalogue: Catalogue,
): string | undefined {
  if (correction?.commodity !== undefined || correction?.leftOut !== undefined) return undefined;
  const word = rememberedWord(item);
  const said = word !== undefined && Object.hasOwn(meant, word) ? meant[word] : undefined;
  return said === leftOutAlways || (said && catalogue.commodities.has(said)) ? said : undefined;
}

/** Reads the haul and lays over it, line by line, what the person answered before and what they correct here. */
export function readLines(
  text: string,
  corrections: Corrections,
  catalogue: Catalogue,
  meant: Meant = {},
): readonly ReadLine[] {
  const repeats = new Map<string, number>();
  return readHaul(text, catalogue).items.map((item, index): ReadLine => {
    const words = correctionKey(item.typed, 0);
    const repeat = repeats.get(words) ?? 0;
    repeats.set(words, repeat + 1);
    const key = correctionKey(item.typed, repeat);
    const correction = Object.hasOwn(corrections, key) ? corrections[key] : undefined;
    const id = `lot-${index + 1}`;
    const recalled = recalledOf(item, correction, meant, catalogue);
    const before = made.get(item);
    const same = before?.correction === correction && before?.recalled === recalled;
    if (same && before?.key === key && before.id === id) return before;
    const line = lineOf(item, { key, id, correction, recalled, catalogue });
    made.set(item, line);
    return line;
  });
}

interface LineWith {
  readonly key: string;
  readonly id: string;
  readonly correction: Correction | undefined;
  readonly recalled: string | undefined;
  readonly catalogue: Catalogue;
}

function lineOf(
  item: UnderstoodLot | NotUnderstood,
  { key, id, correction, recalled, catalogue }: LineWith,
): ReadLine {
  const meant = recalled === leftOutAlways ? undefined : recalled;
  const line = { key, id, correction, recalled };
  if (item.kind === "lot") {
    const said = meant === undefined ? correction : { commodity: meant, ...correction };
    const lot = corrected(item, said, (kind) => catalogue.commodities.get(kind));
    return { kind: "lot", ...line, item, lot: { ...lot, id } };
  }
  const likely = likelyKind(item, catalogue);
  const lot = answered(item, correction, meant ?? likely, { id, catalogue });
  return { kind: "question", ...line, item, likely, lot };
}
