import type { Catalogue } from "@keepwright/catalogue";
import { type Lot, type NotUnderstood, readHaul, type UnderstoodLot } from "@keepwright/planner";
import { type Correction, type Corrections, corrected, correctionKey } from "./corrections.js";

/** One line of what was understood, as the page shows it. */
export interface UnderstoodLine {
  readonly kind: "lot";
  readonly key: string;
  readonly item: UnderstoodLot;
  readonly correction: Correction | undefined;
  /** Absent when the person left the line out. */
  readonly lot: Lot;
}
export interface QuestionLine {
  readonly kind: "question";
  readonly key: string;
  readonly item: NotUnderstood;
  readonly correction: Correction | undefined;
  /** Present once the person has answered with a kind and an amount. */
  readonly lot: Lot | undefined;
}
export type ReadLine = UnderstoodLine | QuestionLine;

function answered(item: NotUnderstood, correction: Correction | undefined, id: string): Lot | undefined {
  if (!correction?.commodity || !correction.grams) return undefined;
  const { leftOut: _, commodity, grams, ...rest } = correction;
  return {
    id,
    commodity,
    grams,
    form: "whole",
    tops: false,
    washed: false,
    extraDays: 0,
    typed: item.typed,
    ...rest,
  };
}

/** Reads the haul and lays the person's corrections over it, line by line. */
export function readLines(text: string, corrections: Corrections, catalogue: Catalogue): readonly ReadLine[] {
  const repeats = new Map<string, number>();
  return readHaul(text, catalogue).items.map((item, index): ReadLine => {
    const words = correctionKey(item.typed, 0);
    const repeat = repeats.get(words) ?? 0;
    repeats.set(words, repeat + 1);
    const key = correctionKey(item.typed, repeat);
    const correction = corrections[key];
    const id = `lot-${index + 1}`;
    return item.kind === "lot"
      ? { kind: "lot", key, item, correction, lot: { ...corrected(item, correction), id } }
      : { kind: "question", key, item, correction, lot: answered(item, correction, id) };
  });
}

/** The lots to plan: all that were understood or answered and not left out. */
export const lotsToPlan = (lines: readonly ReadLine[]): readonly Lot[] =>
  lines.flatMap((line) => (line.lot && !line.correction?.leftOut ? [line.lot] : []));
