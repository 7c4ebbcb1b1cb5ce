import type { Arrangement, Plan, TwoWays, UnsortedHabit } from "@keepwright/planner";
import type { PlanAsked } from "./planMessages.js";
import type { WhatFailed } from "./whatFailed.js";

/** How things lie when nobody plans: by a habit, or as the person told it. */
export type Unplanned = { readonly habit: UnsortedHabit } | { readonly arrangement: Arrangement };

/** The same food laid two ways, evening by evening, beside the plan that is on the page. */
export interface WaysAsked extends PlanAsked {
  readonly kind: "two ways";
  readonly plan: Plan;
  readonly unplanned: Unplanned;
}

/** The figures first, then the same with ranges; or what went wrong. `last`: nothing follows. */
export type WaysAnswer =
  | { readonly kind: "two ways"; readonly made: TwoWays; readonly last: boolean }
  | ({ readonly kind: "problem" } & WhatFailed);
