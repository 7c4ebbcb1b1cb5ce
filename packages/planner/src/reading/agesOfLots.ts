import type { CalendarDate } from "@keepwright/quantities";
import { daysSince } from "./ages.js";
import type { NotUnderstood, Question, UnderstoodLot } from "./reading.js";

export type Item = UnderstoodLot | NotUnderstood;

const asksAge = (question: Question): question is Extract<Question, { ask: "how old" }> =>
  question.ask === "how old";
/** Is it understood, and cut? */
export const isCut = (item: Item): item is UnderstoodLot => item.kind === "lot" && item.lot.form === "cut";

/** A lot with the days since a day that was told, where they are known. */
function withDays(item: UnderstoodLot, on: CalendarDate): UnderstoodLot {
  const days = item.questions.flatMap((question) =>
    asksAge(question) && question.since !== undefined ? [daysSince(question.since, on)] : [],
  );
  if (days.length === 0 || days.includes(undefined)) return item;
  const extraDays = Math.max(item.lot.extraDays, ...(days as number[]));
  const questions = item.questions.filter((question) => !(asksAge(question) && question.since !== undefined));
  return { ...item, lot: { ...item.lot, extraDays }, questions };
}

/**
 * Items on a day: days that were told become days ago. What is cut and may be older than was understood is held back as a question: its safe time would be reckoned from
 * today, and nobody would see it.
 */
export function agedItems(items: readonly Item[], on: CalendarDate | undefined): Item[] {
  const aged: Item[] = [];
  for (const item of items) {
    const known = item.kind === "lot" && on !== undefined ? withDays(item, on) : item;
    const questions = known.questions.filter(asksAge);
    const before = aged.at(-1);
    if (!isCut(known) || questions.length === 0) aged.push(known);
    else if (before?.kind !== "question" || before.from !== known.from)
      aged.push({
        kind: "question",
        typed: known.typed,
        from: known.from,
        to: known.to,
        questions: [...questions, ...known.questions.filter(({ ask }) => ask === "what is this")],
      });
  }
  return aged;
}
