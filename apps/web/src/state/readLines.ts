import type { Catalogue } from "@keepwright/catalogue";
import { type Lot, type NotUnderstood, readHaul, type UnderstoodLot } from "@keepwright/planner";
import { type Correction, type Corrections, corrected, correctionKey, enteredMass } from "./corrections.js";
import type { ReadLine } from "./readLots.js";

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

function answered(
  item: NotUnderstood,
  correction: Correction | undefined,
  likely: string | undefined,
  { id, catalogue }: { readonly id: string; readonly catalogue: Catalogue },
): Lot | undefined {
  const commodity = correction?.commodity ?? likely;
  const mass = commodity && enteredMass(correction?.amount, catalogue.commodities.get(commodity));
  if (!mass || !commodity) return undefined;
  const { leftOut: _, amount: __, ...rest } = correction ?? {};
  const usual = { form: "whole", tops: false, washed: false, extraDays: 0 } as const;
  return { ...usual, typed: item.typed, ...rest, id, commodity, ...mass };
}

/** Lines as they were made last, by what they were read as: what did not change stays one and the same, and is not drawn anew. */
const made = new WeakMap<UnderstoodLot | NotUnderstood, ReadLine>();

/** Reads the haul and lays the person's corrections over it, line by line. */
export function readLines(text: string, corrections: Corrections, catalogue: Catalogue): readonly ReadLine[] {
  const repeats = new Map<string, number>();
  return readHaul(text, catalogue).items.map((item, index): ReadLine => {
    const words = correctionKey(item.typed, 0);
    const repeat = repeats.get(words) ?? 0;
    repeats.set(words, repeat + 1);
    const key = correctionKey(item.typed, repeat);
    const correction = Object.hasOwn(corrections, key) ? corrections[key] : undefined;
    const id = `lot-${index + 1}`;
    const before = made.get(item);
    if (before?.key === key && before.id === id && before.correction === correction) return before;
    const line = lineOf(item, { key, id, correction, catalogue });
    made.set(item, line);
    return line;
  });
}

interface LineWith {
  readonly key: string;
  readonly id: string;
  readonly correction: Correction | undefined;
  readonly catalogue: Catalogue;
}

function lineOf(item: UnderstoodLot | NotUnderstood, { key, id, correction, catalogue }: LineWith): ReadLine {
  if (item.kind === "lot") {
    const lot = corrected(item, correction, (kind) => catalogue.commodities.get(kind));
    return { kind: "lot", key, id, item, correction, lot: { ...lot, id } };
  }
  const likely = likelyKind(item, catalogue);
  const lot = answered(item, correction, likely, { id, catalogue });
  return { kind: "question", key, id, item, correction, likely, lot };
}
