import type { Haul, Household, Kitchen, Lot, LotReason, Plan, Proof } from "@keepwright/planner";
import type { LotLines } from "../state/lotLines.js";
import type { SinceThen } from "../state/sinceThen.js";
import type { WhatFailed } from "./whatFailed.js";

type Standing = NonNullable<Haul["standing"]>;

/** Same seed for everybody: the same haul and kitchen give the same plan. */
export const planSeed = 1;

/** What a plan is asked for. */
export interface PlanAsked {
  readonly lots: readonly Lot[];
  readonly kitchen: Kitchen;
  readonly household: Household;
  readonly from: string;
  /** Days that have gone by since then, and what became of them. */
  readonly since?: SinceThen;
  /** How the kitchen stands, where the plan was carried on. */
  readonly standing?: Standing;
  /** Lines of the list that its lots were read from, where the plan was carried on. */
  readonly lines?: LotLines;
}

/** What the page asks of the worker. `number` tells a late answer from the one that is wanted. */
export interface PlanRequest extends PlanAsked {
  readonly number: number;
}

/** Once there is a plan: asks for the reasons, and for how much better it could be. */
export interface AfterRequest extends PlanRequest {
  readonly plan: Plan;
}

/** What the page tells the worker that has the last plan in hand: a plan to take, or a question to answer from it. */
export type QuickMessage =
  | {
      readonly quick: "take in hand";
      readonly asked: PlanAsked;
      readonly plan: Plan;
      readonly carried?: Carried;
    }
  | { readonly quick: "ask"; readonly asked: PlanAsked; readonly number: number };

/** Where a plan was carried on: what it answers by itself, and the plan of the first day. */
export interface Carried {
  readonly asked: PlanAsked;
  readonly past: Plan;
}

/** To every question, without a plan where the one in hand does not help. */
export interface QuickAnswer {
  readonly quick: "answer";
  readonly number: number;
  readonly plan: Plan | undefined;
  readonly carried?: Carried;
}

/** The plan first, then the reasons for it, then how much better it could be; or, at any time, what went wrong. */
export type PlanAnswer =
  /** Before the plan, where there is a plan in hand of nearly the same: made from that one, to stand until the plan comes that everybody gets. */
  | { readonly number: number; readonly kind: "meanwhile"; readonly plan: Plan; readonly carried?: Carried }
  | { readonly number: number; readonly kind: "plan"; readonly plan: Plan; readonly carried?: Carried }
  | { readonly number: number; readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  /** Last of all; without a proof where none could be made, which nobody needs to hear of: the plan stands. */
  | { readonly number: number; readonly kind: "proof"; readonly proof: Proof | undefined }
  | ({ readonly number: number; readonly kind: "problem" } & WhatFailed);
