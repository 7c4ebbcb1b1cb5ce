import type { Household, Kitchen, Lot, LotReason, Plan, Proof } from "@keepwright/planner";

/** Same seed for everybody: the same haul and kitchen give the same plan. */
export const planSeed = 1;

/** What a plan is asked for. */
export interface PlanAsked {
  readonly lots: readonly Lot[];
  readonly kitchen: Kitchen;
  readonly household: Household;
  readonly from: string;
}

/** What the page asks of the worker. `number` tells a late answer from the one that is wanted. */
export interface PlanRequest extends PlanAsked {
  readonly number: number;
}

/** What the page tells the worker that has the last plan in hand: a plan to take, or a question to answer from it. */
export type QuickMessage =
  | { readonly quick: "take in hand"; readonly asked: PlanAsked; readonly plan: Plan }
  | { readonly quick: "ask"; readonly asked: PlanAsked; readonly number: number };

/** The plan first, then the reasons for it, then how much better it could be; or, at any time, what went wrong. */
export type PlanAnswer =
  /** Before the plan, where there is a plan in hand of nearly the same: made from that one, to stand until the plan comes that everybody gets. */
  | { readonly number: number; readonly kind: "meanwhile"; readonly plan: Plan }
  | { readonly number: number; readonly kind: "plan"; readonly plan: Plan }
  | { readonly number: number; readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  /** Last of all; without a proof where none could be made, which nobody needs to hear of: the plan stands. */
  | { readonly number: number; readonly kind: "proof"; readonly proof: Proof | undefined }
  | { readonly number: number; readonly kind: "problem"; readonly message: string };
