import type { Lot, UnderstoodLot } from "@keepwright/planner";

/** What a person changed in a line that was understood. Only what they touched is kept. */
export interface Correction {
  readonly commodity?: string;
  readonly grams?: number;
  readonly ripeness?: Lot["ripeness"];
  readonly form?: Lot["form"];
  readonly tops?: boolean;
  readonly washed?: boolean;
  readonly leftOut?: boolean;
}

/** Corrections by the line's own words, so that they stay with the line while the text around it changes. */
export type Corrections = Readonly<Record<string, Correction>>;

/** Key of the nth line with the same words: "3 avocados#0". */
export const correctionKey = (typed: string, repeat: number): string =>
  `${typed.trim().toLowerCase()}#${repeat}`;

/** The lot as it stands after the person's correction. A change of kind keeps the amount in grams. */
export function corrected(item: UnderstoodLot, correction: Correction | undefined): Omit<Lot, "id"> {
  if (!correction) return item.lot;
  const { leftOut: _, ...changes } = correction;
  const lot = { ...item.lot, ...changes };
  if (changes.commodity !== undefined && changes.commodity !== item.lot.commodity) {
    delete lot.pieces;
    if (changes.ripeness === undefined) delete lot.ripeness;
  }
  if (changes.grams !== undefined && changes.grams !== item.lot.grams) delete lot.pieces;
  return lot;
}
