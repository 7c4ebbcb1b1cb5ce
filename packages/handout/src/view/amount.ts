import type { PlannedLot } from "@keepwright/planner";
import { massWords } from "../words/amounts.js";
import type { HandoutContext } from "./context.js";

/** Pieces and mass as the person gave them, by the lot's own id (before any split). */
export type CountedLots = ReadonlyMap<
  string,
  { readonly grams: number; readonly pieces?: number | undefined; readonly typed?: string | undefined }
>;

/** Pieces in a part of a counted lot, when the part holds a whole number of them (within a tenth). */
function piecesIn(part: PlannedLot, counted: CountedLots | undefined): number | undefined {
  const whole = counted?.get(part.lot);
  if (!whole?.pieces) return undefined;
  const pieces = (whole.pieces * part.grams) / whole.grams;
  return Math.abs(pieces - Math.round(pieces)) < 0.1 && Math.round(pieces) > 0
    ? Math.round(pieces)
    : undefined;
}

/** "3 (about 500 g)" where pieces were counted, otherwise "about 500 g". */
export function lotAmount(context: HandoutContext, lot: PlannedLot, counted?: CountedLots): string {
  return amountWords(context, lot.grams, piecesIn(lot, counted));
}

/** The same for any amount. */
export function amountWords(context: HandoutContext, grams: number, pieces?: number): string {
  const mass = massWords(context.speaker, context.units, grams);
  return pieces === undefined
    ? context.speaker.say("amount.mass", { mass })
    : context.speaker.say("amount.pieces", { pieces, mass });
}
