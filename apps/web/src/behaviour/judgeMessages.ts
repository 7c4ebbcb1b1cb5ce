import type {
  Arrangement,
  BesideDraws,
  ImproveStep,
  Judgement,
  Kitchen,
  LotReason,
  OneMove,
  Plan,
} from "@keepwright/planner";
import type { PlanAsked } from "./planMessages.js";
import type { WhatFailed } from "./whatFailed.js";

/** How things lie, to be judged beside the plan: beside the one given, or beside one made for it. */
export interface JudgementAsked extends PlanAsked {
  readonly kind: "judge";
  readonly arrangement: Arrangement;
  readonly plan?: Plan | undefined;
  /** True where nothing is wanted but the judgement: no move is looked for that would help, and nothing is drawn. */
  readonly alone?: boolean;
}

/** What one change would save. */
export interface ImprovementsAsked extends PlanAsked {
  readonly kind: "improve";
}

/** Why the parts of one lot lie where a plan puts them, beside every other place and wrap. */
export interface ReasonsAsked extends PlanAsked {
  readonly kind: "reasons";
  readonly plan: Plan;
  readonly lot: string;
}

export type JudgeAsked = JudgementAsked | ImprovementsAsked | ReasonsAsked;

/** What the page asks of the worker. `number` tells a late answer from the one that is wanted. */
export type JudgeRequest = JudgeAsked & { readonly number: number };

/** Improvements so far; and for each change the kitchen it makes, where it is a change to the kitchen. */
export interface Improving {
  readonly step: ImproveStep;
  readonly kitchens: readonly (Kitchen | undefined)[];
}

/** The judgement, the one move that helps it most, and how far the waste may go; the improvements, one after another; or what went wrong. */
export type JudgeAnswer = { readonly number: number } & (
  | { readonly kind: "judgement"; readonly judgement: Judgement }
  /** Undefined where no move helps. */
  | { readonly kind: "one move"; readonly oneMove: OneMove | undefined }
  /** Last of a judgement that can be drawn. */
  | { readonly kind: "draws"; readonly draws: BesideDraws }
  /** Comes again and again; the last one has tried all that there is to try. */
  | { readonly kind: "improving"; readonly improving: Improving }
  /** Last of a judgement that was wanted alone, or that cannot be drawn. */
  | { readonly kind: "enough" }
  | { readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  | ({ readonly kind: "problem" } & WhatFailed)
);

/** Whether no other answer follows to the same question. */
export function isLast(answer: JudgeAnswer): boolean {
  if (answer.kind === "improving") return answer.improving.step.tried === answer.improving.step.of;
  return answer.kind !== "judgement" && answer.kind !== "one move";
}

/** What has to be the same for a judgement to be made beside the same plan. */
export const ground = ({ lots, kitchen, household, from }: PlanAsked): string =>
  JSON.stringify([lots, kitchen, household, from]);
