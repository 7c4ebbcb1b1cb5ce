import { objectiveLess } from "../problem/objective.js";
import type { Objective } from "../problem/plan.js";
import type { Choice, Part } from "../problem/programme.js";
import { programmeKey } from "../problem/programme.js";
import { type Evaluation, evaluatePrepared } from "../search/evaluate.js";
import type { Prepared } from "../search/prepare.js";

/** One lot laid as the plan has it, or one vent set so, with everything else left as it lies. */
export type OneMove = {
  /** What each term of the objective falls by [g]: less than nothing where it grows. */
  readonly saved: Objective;
} & (
  | { readonly move: "lot" /** Id of the lot. */; readonly lot: string }
  | { readonly move: "vent" /** Id of the place. */; readonly place: string }
);

/** A move with what follows from it. */
export interface FoundMove {
  readonly move: OneMove;
  readonly after: Evaluation;
}

const partsOf = ({ parts }: Choice, lot: number): readonly Part[] => parts.filter((part) => part.lot === lot);

const layOf = (choice: Choice, lot: number): string =>
  partsOf(choice, lot)
    .map(({ portions, programme }) => `${portions} ${programmeKey(programme)}`)
    .sort()
    .join("; ");

/** An arrangement with one lot laid as in the plan. */
function withLot(yours: Choice, plan: Choice, lot: number): Choice {
  const rest = yours.parts.filter((part) => part.lot !== lot);
  const parts = [...rest, ...partsOf(plan, lot)].sort((one, other) => one.lot - other.lot);
  return { parts, vents: yours.vents };
}

interface Tried {
  readonly move:
    | { readonly move: "lot"; readonly lot: string }
    | { readonly move: "vent"; readonly place: string };
  readonly choice: Choice;
}

function everyMove({ problem }: Prepared, yours: Choice, plan: Choice): Tried[] {
  const lots = problem.lots
    .filter(({ index }) => layOf(yours, index) !== layOf(plan, index))
    .map(
      ({ index, lot }): Tried => ({
        move: { move: "lot", lot: lot.id },
        choice: withLot(yours, plan, index),
      }),
    );
  const vents = problem.vents.flatMap((place, index): Tried[] => {
    if (yours.vents[index] === plan.vents[index]) return [];
    const set = yours.vents.map((setting, other) => (other === index ? plan.vents[index]! : setting));
    const move = { move: "vent" as const, place: problem.places[place]!.place.id };
    return [{ move, choice: { parts: yours.parts, vents: set } }];
  });
  return [...lots, ...vents];
}

/**
 * The move that brings an arrangement down most on the objective, of all that take one lot or one vent to where the plan has it. Every one is
 * simulated with its neighbours and eating days anew. Undefined where none brings it down.
 */
export function oneMove(prepared: Prepared, yours: Evaluation, plan: Evaluation): FoundMove | undefined {
  const tried = everyMove(prepared, yours.choice, plan.choice).map(({ move, choice }): FoundMove => {
    const after = evaluatePrepared(prepared, choice);
    return { move: { ...move, saved: objectiveLess(yours.objective, after.objective) }, after };
  });
  return tried.reduce<FoundMove | undefined>(
    (most, one) => (one.move.saved.total > (most?.move.saved.total ?? 0) ? one : most),
    undefined,
  );
}
