import { fateOfAll, worthOf } from "../buying/fate.js";
import { evaluatePrepared } from "../search/evaluate.js";
import type { Planned } from "./planned.js";

/** Lots planned anew without, at most: a plan of its own for every lot of a large haul would take minutes. */
export const mostLotsLeft = 6;

/** What a plan is worth [g] that goes on as it is without one of its lots: the others where they are, the eating days anew. */
function worthWithout({ prepared, evaluation }: Planned, lot: number): number {
  const { parts, vents } = evaluation.choice;
  const others = { parts: parts.filter((part) => part.lot !== lot), vents };
  return worthOf(fateOfAll({ prepared, evaluation: evaluatePrepared(prepared, others) }));
}

/**
 * Ids of the lots without which a plan that is else left as it is would be worth most: eaten less wasted, as when buying. Every lot is tried so; those named are worth a plan of their own.
 */
export function lotsToLeave(base: Planned): ReadonlySet<string> {
  const { lots } = base.prepared.problem;
  if (lots.length <= mostLotsLeft) return new Set(lots.map(({ lot }) => lot.id));
  const tried = lots.map(({ lot, index }) => ({ id: lot.id, worth: worthWithout(base, index) }));
  const best = tried.sort((one, other) => other.worth - one.worth).slice(0, mostLotsLeft);
  return new Set(best.map(({ id }) => id));
}
