import type { Highs } from "highs";
import type { Prepared } from "../search/prepare.js";
import { Brancher } from "./branch.js";
import { Columns } from "./columns.js";
import { KitchenBoxes } from "./kitchenBoxes.js";
import { Relaxation, type Solved } from "./relaxation.js";
import { RootAir } from "./rootAir.js";
import type { Supposition } from "./supposition.js";
import { everyWayOf } from "./ways.js";

export interface BoundOptions {
  /** Relaxations to solve at most: a fixed number, never a clock, so that the same request gives the same bound everywhere. */
  readonly mostRelaxations: number;
  /** Objective of a known plan [g]: branches that cannot beat it are left. */
  readonly value: number;
  /** Told of the bound so far [g] and of the relaxations solved. */
  readonly progress?: ((bound: number, relaxations: number) => void) | undefined;
}

export interface Bound {
  /** [g], at most the value. */
  readonly bound: number;
  readonly relaxations: number;
}

/** Relaxations solved before any branch, each with the air told apart further where the last lay between. Declared. */
const mostRefinements = 6;

/** Share of its value that telling the air apart further must have lifted a relaxation by for it to be done again: where it did not, branching serves better. Declared. */
const leastGain = 0.002;

interface Branch {
  readonly supposition: Supposition;
  readonly solved: Solved;
}

/** Gap, as a share of the value, below which a bound is close enough: less than anybody could notice in a kitchen. */
const closeEnough = 0.001;

/**
 * Branch and bound, the lowest first: the relaxation with the lowest value is told apart further, until none may be lower than the known plan or the number of relaxations is used up. The
 * bound is the lowest of what is left.
 */
export function boundOf(highs: Highs, prepared: Prepared, options: BoundOptions): Bound {
  const { problem } = prepared;
  const kitchen = new KitchenBoxes(problem);
  const ways = problem.lots.map((lot) => everyWayOf(problem, lot, kitchen));
  const air = new RootAir(kitchen, ways);
  const root = air.root();
  const columns = new Columns(prepared, kitchen.optimist, ways, (lot) => air.ranges(root, lot));
  const relaxation = new Relaxation(highs, prepared, kitchen, air, columns);
  try {
    return branchAndBound(relaxation, new Brancher(kitchen, air, columns), root, options);
  } finally {
    relaxation.dispose();
  }
}

function branchAndBound(
  relaxation: Relaxation,
  brancher: Brancher,
  root: Supposition,
  { mostRelaxations, value, progress }: BoundOptions,
): Bound {
  let first = relaxation.solve(root);
  let relaxations = 1;
  for (let gain = value; relaxations < Math.min(mostRefinements, mostRelaxations); relaxations++) {
    if (first.value >= value * (1 - closeEnough) || gain < leastGain * Math.min(value, first.value)) break;
    progress?.(Math.max(0, first.value), relaxations);
    if (!relaxation.refine(first)) break;
    const finer = relaxation.solve(root);
    gain = finer.value - first.value;
    first = { ...finer, value: Math.max(finer.value, first.value) };
  }
  const open: Branch[] = [{ supposition: root, solved: first }];
  // Of branches that cannot be told apart further, and of the known plan.
  let closed = value;
  const lowest = (): number => Math.min(closed, ...open.map(({ solved }) => solved.value));
  while (open.length > 0 && relaxations < mostRelaxations && lowest() < value * (1 - closeEnough)) {
    progress?.(Math.max(0, lowest()), relaxations);
    open.sort((a, b) => b.solved.value - a.solved.value);
    const { supposition, solved } = open.pop()!;
    const parts = brancher.split(supposition, solved);
    if (!parts) closed = Math.min(closed, solved.value);
    for (const part of parts ?? []) {
      relaxations++;
      const found = relaxation.solve(part);
      // What is narrower cannot be better.
      const child = { ...found, value: Math.max(found.value, solved.value) };
      if (child.value < closed) open.push({ supposition: part, solved: child });
    }
  }
  return { bound: Math.max(0, lowest()), relaxations };
}
