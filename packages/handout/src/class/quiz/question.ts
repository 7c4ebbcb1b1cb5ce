import type { NamedSource } from "../../view/sourceLines.js";
import type { ClassContext } from "../classContext.js";
import type { ClassTopic } from "../classRequest.js";

export const questionSorts = [
  "cut hours",
  "cut days",
  "place",
  "cold",
  "gas giver",
  "gas harmed",
  "ripens",
  "longest",
  "mould",
  "discard",
  "wash",
] as const;
export type QuestionSort = (typeof questionSorts)[number];

/** A choice by what it stands for (a kind's id, a kind of place, a number, a name of what to do), and in words. */
export interface Choice {
  readonly key: string;
  readonly text: string;
}

/** A question before its wrong choices are drawn. */
export interface Draft {
  readonly sort: QuestionSort;
  /** The kind it is about; for "which of these", the kind that is the answer. */
  readonly subject: string;
  readonly question: string;
  readonly right: Choice;
  /** Choices that are wrong beyond doubt: at least `least` of them. */
  readonly wrong: readonly Choice[];
  /** In the order given, as with yes and no or growing numbers; else mixed. */
  readonly inOrder?: readonly string[] | undefined;
  /** The order may as well run backwards, and does so by the seed: else what is safe, the least, would always come first. */
  readonly eitherWay?: boolean | undefined;
  /** Why, where the wrong choices have a say in it. */
  why(wrong: readonly Choice[]): string;
  readonly evidence: readonly Omit<NamedSource, "figure" | "citation">[];
}

/** One sort of question, made from the catalogue or from what was worked out for the kitchen. */
export interface Asker {
  readonly sort: QuestionSort;
  /** Asked where the class is about one of these; absent: in every class. */
  readonly topics?: readonly ClassTopic[];
  /** Fewest wrong choices. */
  readonly least: number;
  /** Questions that can be asked about the kit's kinds. */
  drafts(context: ClassContext): Draft[];
}

/** By what choices are called, on paper, on slides and on the page. */
export const choiceLetters = "ABCDEFGHIJ";

/** A question as it is asked. */
export interface Question extends Omit<Draft, "right" | "wrong" | "why" | "inOrder" | "eitherWay"> {
  readonly choices: readonly Choice[];
  /** Place of the right choice among them. */
  readonly answer: number;
  readonly why: string;
}
