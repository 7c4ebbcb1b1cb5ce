import type { AskedAnswer, AskedState } from "@keepwright/handout";
import type { Kitchen } from "@keepwright/planner";
import type { WhatFailed } from "./whatFailed.js";

/** What is asked about one kind in one kitchen. */
export interface KindAsked extends AskedState {
  readonly id: string;
  readonly kitchen: Kitchen;
}

/** What the page asks of the worker about one kind; `asked` is the question as a text, by which its answer is known. */
export interface AskRequest {
  readonly kind: "ask";
  readonly asked: string;
}

export type AskAnswer =
  | { readonly asked: string; readonly kind: "asked"; readonly answer: AskedAnswer }
  | ({ readonly asked: string; readonly kind: "problem" } & WhatFailed);
