import type { Commodity } from "@keepwright/catalogue";
import type { Lot, UnderstoodLot } from "@keepwright/planner";
import { type EnteredAmount, gramsOf, piecesOf } from "./enteredAmount.js";

/** What a person changed in a line that was understood. Only what they touched is kept. */
export interface Correction {
  readonly commodity?: string;
  /** As it was entered: 2 lb stay 2 lb whatever units are shown, and 3 pieces stay 3 pieces of another kind. */
  readonly amount?: EnteredAmount;
  readonly ripeness?: Lot["ripeness"];
  readonly form?: Lot["form"];
  readonly tops?: boolean;
  readonly washed?: boolean;
  /** Days since it was bought or picked. */
  readonly extraDays?: number;
  readonly leftOut?: boolean;
}

/** Corrections by the line's own words, so that they stay with the line while the text around it changes. */
export type Corrections = Readonly<Record<string, Correction>>;

/** Key of the nth line with the same words: "3 avocados#0". */
export const correctionKey = (typed: string, repeat: number): string =>
  `${typed.trim().toLowerCase()}#${repeat}`;

type KindOf = (id: string) => Commodity | undefined;

/** The amount of a lot of that kind; undefined where the kind has no such unit. */
export function enteredMass(amount: EnteredAmount | undefined, commodity: Commodity | undefined) {
  const grams = amount && gramsOf(amount, commodity);
  if (!amount || grams === undefined) return undefined;
  const pieces = piecesOf(amount);
  return pieces === undefined ? { grams } : { grams, pieces };
}

/**
 * The lot as it stands after the person's correction. Of another kind, counted pieces stay as many pieces where that kind is
 * counted too; any other amount keeps its grams.
 */
export function corrected(
  item: UnderstoodLot,
  correction: Correction | undefined,
  kindOf: KindOf,
): Omit<Lot, "id"> {
  if (!correction) return item.lot;
  const { leftOut: _, amount, ...changes } = correction;
  const lot = { ...item.lot, ...changes };
  const commodity = kindOf(lot.commodity);
  const another = lot.commodity !== item.lot.commodity;
  if (another && changes.ripeness === undefined) delete lot.ripeness;
  const counted =
    another && item.lot.pieces !== undefined ? { value: item.lot.pieces, unit: "each" } : undefined;
  const mass = enteredMass(amount ?? counted, commodity);
  if (!mass && !another) return lot;
  const { pieces: __, ...bare } = lot;
  return { ...bare, ...(mass ?? { grams: item.lot.grams }) };
}
