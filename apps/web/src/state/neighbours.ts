export interface Neighbours {
  readonly before: string | undefined;
  readonly after: string | undefined;
}

/**
 * The kinds before and after one: among those a search had found, and beyond their ends in the order of all. So a presenter's key never
 * comes to a dead end within what was searched for.
 */
export function neighbours(known: string, found: readonly string[], all: readonly string[]): Neighbours {
  const inAll = all.indexOf(known);
  const inFound = found.indexOf(known);
  const beside = (by: 1 | -1) =>
    (inFound < 0 ? undefined : found[inFound + by]) ?? (inAll < 0 ? undefined : all[inAll + by]);
  return { before: beside(-1), after: beside(1) };
}

export const noNeighbours: Neighbours = { before: undefined, after: undefined };
