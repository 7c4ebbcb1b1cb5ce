import type { Lot, NotUnderstood, Question, UnderstoodLot } from "@keepwright/planner";
import type { Correction } from "./corrections.js";
import { leftOutAlways } from "./meant.js";

/** One line of what was understood, as the page shows it. */
export interface UnderstoodLine {
  readonly kind: "lot";
  readonly key: string;
  /** Of its lot, where there is one. */
  readonly id: string;
  readonly item: UnderstoodLot;
  readonly correction: Correction | undefined;
  /** What the person said of its word before, and nothing else of this line: a kind, or `leftOutAlways`. */
  readonly recalled: string | undefined;
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
  readonly recalled: string | undefined;
  /** The kind the words name although the amount is in doubt; shown as a suggestion, never planned with unasked. */
  readonly likely: string | undefined;
  /** Present once the person has answered with a kind and an amount. */
  readonly lot: Lot | undefined;
}
export type ReadLine = UnderstoodLine | QuestionLine;

/** Cut by the person's correction although its words leave in doubt how old it is: never taken for cut today. */
const lacksAge = ({ item, lot, correction }: ReadLine): boolean =>
  lot?.form === "cut" &&
  correction?.extraDays === undefined &&
  item.questions.some(({ ask }) => ask === "how old");

/** Left out by the person, here or wherever its word stands. */
export const isLeftOut = ({ correction, recalled }: ReadLine): boolean =>
  correction?.leftOut ?? recalled === leftOutAlways;

/** What is still asked of a line of which nothing was said here. */
export const stillAsked = ({ item, recalled }: ReadLine): readonly Question[] =>
  recalled === undefined ? item.questions : item.questions.filter(({ ask }) => ask !== "which commodity");

/** Whether a line still waits for the person: not understood, or doubtful, and neither answered nor left out. */
export function waits(line: ReadLine): boolean {
  if (isLeftOut(line)) return false;
  if (line.kind === "question") return line.lot === undefined;
  return stillAsked(line).length > 0 && (!line.correction || lacksAge(line));
}

/** The lots to plan: all that were understood or answered and not left out. */
export const lotsToPlan = (lines: readonly ReadLine[]): readonly Lot[] =>
  lines.flatMap((line) => (line.lot && !isLeftOut(line) && !lacksAge(line) ? [line.lot] : []));
