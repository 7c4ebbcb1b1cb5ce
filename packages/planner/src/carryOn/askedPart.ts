import type { Plan } from "../problem/plan.js";
import type { Evaluation } from "../search/evaluate.js";
import type { Prepared } from "../search/prepare.js";
import type { Carrying } from "./carryOn.js";

/** One part of the earlier plan of which something is left, and the new plan. */
export interface AskedPart {
  readonly carrying: Carrying;
  readonly prepared: Prepared;
  readonly evaluation: Evaluation;
  readonly plan: Plan;
  /** Index in the earlier plan. */
  readonly part: number;
  /** Id in the new haul. */
  readonly id: string;
}

/** Change of a life worth naming: this share of it, and this many days. Declared. */
export const worthNaming = { share: 0.05, days: 0.5 } as const;

/** It was said that it lies elsewhere than the plan had it. */
export const movedByHand = ({ carrying, part }: AskedPart): boolean =>
  carrying.bound.happenings.some(
    ({ parts, place, said }) => parts.includes(part) && (place !== undefined || said.wrap !== undefined),
  );
