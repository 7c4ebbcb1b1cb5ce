import type { CarriedOn } from "../carryOn/carriedOn.js";
import { type CarryOnRequest, carriedProblem, carrying, told } from "../carryOn/carryOn.js";
import { type PlanInHand, preparedAgain } from "./planAgain.js";

/** A plan carried on, with what it rests on. */
export interface CarriedInHand {
  readonly told: CarriedOn;
  readonly inHand: PlanInHand;
}

/**
 * Carries a plan on after a correction (an amount of the first list, something more that came home, a meal that was not eaten), going on from what the same plan
 * was carried on to before: what is left stays where that had it, and what the correction touches is looked for anew. Quicker than `carryOn`, which may find
 * something better.
 *
 * Pure and repeatable. Throws what `carryOn` throws.
 */
export function carryOnAgain(before: PlanInHand, request: CarryOnRequest): CarriedInHand {
  const state = carrying(request);
  const { prepared, evaluation } = preparedAgain(before, carriedProblem(state, request));
  const carried = told(state, prepared, evaluation);
  return { told: carried, inHand: { plan: carried.plan, prepared, evaluation } };
}
