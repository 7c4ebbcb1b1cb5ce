import type { CheckedRequest } from "../improve/triedChange.js";
import { bindProblem } from "../problem/problem.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import { type Prepared, prepare } from "../search/prepare.js";
import { replanned } from "../search/replanned.js";
import { unitsOf, type Wish } from "./boughtUnit.js";

/** Units of each wish that are bought, in the order of the wishes. */
export type Basket = readonly number[];

/** What was asked for, and each thing's units. */
export interface Wished {
  readonly request: CheckedRequest;
  readonly wishes: readonly Wish[];
}

/** A basket with a plan for it, as the search left it. */
export interface Kept {
  readonly basket: Basket;
  readonly prepared: Prepared;
  readonly evaluation: Evaluation;
}

export const everything = ({ wishes }: Wished): Basket => wishes.map(({ count }) => count);
export const isEmpty = (basket: Basket): boolean => basket.every((units) => units === 0);

/** The request for what is bought. The basket must not be empty. */
export const requestFor = ({ request, wishes }: Wished, basket: Basket): CheckedRequest => ({
  ...request,
  haul: { lots: wishes.flatMap((wish, at) => (basket[at]! > 0 ? [unitsOf(wish, basket[at]!)] : [])) },
});

/** Index of a wish among the lots of a kept basket's problem; −1 where none of it is in the plan. */
export const lotOfWish = ({ wishes }: Wished, { prepared }: Kept, wish: number): number =>
  prepared.problem.lots.findIndex(({ lot }) => lot.id === wishes[wish]!.lot.id);

/**
 * The same things in other amounts, planned from the plan at hand: every part where it lay, more or fewer portions of it, then downhill by the quick moves.
 * A plan from the start takes several times as long; the last word is had by one (`buyable`).
 */
export function rekept(wished: Wished, basket: Basket, from: Kept): Kept {
  const prepared = prepare(bindProblem(requestFor(wished, basket)));
  return { basket, prepared, evaluation: replanned(prepared, from) };
}

/** Nothing in the kitchen. */
export const emptied = (from: Kept): Kept => ({
  ...from,
  basket: from.basket.map(() => 0),
  evaluation: evaluatePrepared(from.prepared, { ...from.evaluation.choice, parts: [] }),
});
