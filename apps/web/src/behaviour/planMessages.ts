import type { Household, Kitchen, Lot, LotReason, Plan } from "@keepwright/planner";

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

export type PlanAnswer =
  | { readonly number: number; readonly kind: "plan"; readonly plan: Plan }
  | { readonly number: number; readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  | { readonly number: number; readonly kind: "problem"; readonly message: string };
