import type { Plan } from "@keepwright/planner";
import type { ReadLine } from "./readLots.js";

/**
 * The key of the person's line for each lot of a plan; for one part of several, that with the number of the part. A lot of which the
 * line is there no more (the plan is a moment older than the text) keeps its id.
 */
export function lineKeys(plan: Pick<Plan, "lots">, lines: readonly ReadLine[]): (part: string) => string {
  const byLot = new Map(lines.flatMap(({ lot, key }) => (lot ? [[lot.id, key] as const] : [])));
  const byPart = new Map(
    plan.lots.map(({ id, lot }) => [id, (byLot.get(lot) ?? lot) + id.slice(lot.length)] as const),
  );
  return (part) => byPart.get(part) ?? part;
}
