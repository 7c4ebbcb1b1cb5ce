import { folded } from "@keepwright/catalogue";
import type { NotUnderstood, Question, UnderstoodLot } from "@keepwright/planner";

type Item = UnderstoodLot | NotUnderstood;

/** Whether it asks what the thing itself is, and not about this one line or words beside it. */
const isOfThing = (question: Question, item: Item): boolean =>
  question.ask === "which commodity" || (item.kind === "question" && mayBeNoProduce(question));

const mayBeNoProduce = (question: Question): boolean =>
  question.ask === "what is this" || (question.ask === "unsafe or other" && question.reason === "no produce");

/** The word of which it is asked what it means, as it was typed; undefined where nothing of the kind is asked, or of several. */
export function wordAsked(item: Item): string | undefined {
  const [asked, another] = item.questions.filter((question) => isOfThing(question, item));
  return asked && !another && folded(asked.word) !== "" ? asked.word : undefined;
}

/** That word as it is remembered. */
export function rememberedWord(item: Item): string | undefined {
  const word = wordAsked(item);
  return word === undefined ? undefined : folded(word);
}

/** Whether leaving it out says what the word means, and not only that this one is not to be planned. */
export const isLeftOutByWord = (item: Item): boolean =>
  item.kind === "question" && item.questions.every(mayBeNoProduce);
