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

/** The plan first, then the reasons for it, then how much better it could be; or, at any time, what went wrong. */
export type PlanAnswer =
  | { readonly number: number; readonly kind: "plan"; readonly plan: Plan }
  | { readonly number: number; readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  /** Last of all; without a proof where none could be made, which nobody needs to hear of: the plan stands. */
  | { readonly number: number; readonly kind: "proof"; readonly proof: Proof | undefined }
  | { readonly number: number; readonly kind: "problem"; readonly message: string };
