import type { Household, Kitchen, Lot, LotReason, Plan } from "@keepwright/planner";

/** What the page asks of the worker. `number` tells a late answer from the one that is wanted. */
export interface PlanRequest {
  readonly number: number;
  readonly lots: readonly Lot[];
  readonly kitchen: Kitchen;
  readonly household: Household;
  readonly from: string;
}

export type PlanAnswer =
  | { readonly number: number; readonly kind: "plan"; readonly plan: Plan }
  | { readonly number: number; readonly kind: "reasons"; readonly reasons: readonly LotReason[] }
  | { readonly number: number; readonly kind: "problem"; readonly message: string };
