import { evaluatePrepared } from "../search/evaluate.js";
import type { Planned } from "./planned.js";

/** Lots planned anew without, at most: a plan of its own for every lot of a large haul would take minutes. */
export const mostLotsLeft = 6;

/** Waste [g] of a plan that goes on as it is without one of its lots: the others where they are, the eating days anew. */
function wasteWithout({ prepared, evaluation }: Planned, lot: number): number {
  const { parts, vents } = evaluation.choice;
  return evaluatePrepared(prepared, { parts: parts.filter((part) => part.lot !== lot), vents }).objective
    .waste;
}

/**
 * Ids of the lots whose absence saves most in a plan that is else left as it is. Every lot is tried so; those named are worth a plan of their own.
 */
export function lotsToLeave(base: Planned): ReadonlySet<string> {
  const { lots } = base.prepared.problem;
  if (lots.length <= mostLotsLeft) return new Set(lots.map(({ lot }) => lot.id));
  const tried = lots.map(({ lot, index }) => ({ id: lot.id, waste: wasteWithout(base, index) }));
  const least = tried.sort((one, other) => one.waste - other.waste).slice(0, mostLotsLeft);
  return new Set(least.map(({ id }) => id));
}
