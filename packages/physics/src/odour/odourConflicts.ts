import type { OdourPair } from "@keepwright/catalogue";

/** A kind whose smell another takes up, lying in the same air. */
export interface OdourConflict {
  readonly giver: string;
  readonly taker: string;
}

/**
 * The pairs of a declared table (Handbook 66: who passes its smell to whom) that lie together, given the kinds in one box of air by id. Each pair once, in the table's order.
 * Not computed from physics: there is no published rate. Kinds the table does not name give and take nothing.
 */
export function odourConflicts(together: Iterable<string>, table: readonly OdourPair[]): OdourConflict[] {
  const present = new Set(together);
  const seen = new Set<string>();
  return table
    .filter(({ giver, taker }) => giver !== taker && present.has(giver) && present.has(taker))
    .filter(({ giver, taker }) => !seen.has(`${giver}>${taker}`) && seen.add(`${giver}>${taker}`))
    .map(({ giver, taker }) => ({ giver, taker }));
}
