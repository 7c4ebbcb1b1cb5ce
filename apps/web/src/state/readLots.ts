import type { Lot, NotUnderstood, UnderstoodLot } from "@keepwright/planner";
import type { Correction } from "./corrections.js";

/** One line of what was understood, as the page shows it. */
export interface UnderstoodLine {
  readonly kind: "lot";
  readonly key: string;
  /** Of its lot, where there is one. */
  readonly id: string;
  readonly item: UnderstoodLot;
  readonly correction: Correction | undefined;
  /** As it stands after the correction, also when it is left out. */
  readonly lot: Lot;
}
export interface QuestionLine {
  readonly kind: "question";
  readonly key: string;
  /** Of its lot, where there is one. */
  readonly id: string;
  readonly item: NotUnderstood;
  readonly correction: Correction | undefined;
  /** The kind the words name although the amount is in doubt; shown as a suggestion, never planned with unasked. */
  readonly likely: string | undefined;
  /** Present once the person has answered with a kind and an amount. */
  readonly lot: Lot | undefined;
}
export type ReadLine = UnderstoodLine | QuestionLine;

/** Whether a line still waits for the person: not understood, or doubtful, and neither answered nor left out. */
export function waits(line: ReadLine): boolean {
  if (line.correction?.leftOut) return false;
  return line.kind === "question"
    ? line.lot === undefined
    : line.item.questions.length > 0 && !line.correction;
}

/** The lots to plan: all that were understood or answered and not left out. */
export const lotsToPlan = (lines: readonly ReadLine[]): readonly Lot[] =>
  lines.flatMap((line) => (line.lot && !line.correction?.leftOut ? [line.lot] : []));
