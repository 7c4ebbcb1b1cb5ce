import type { Highs } from "highs";
import type { Prepared } from "../search/prepare.js";
import { Brancher } from "./branch.js";
import { Columns } from "./columns.js";
import { KitchenBoxes } from "./kitchenBounds.js";
import { Relaxation, type Solved } from "./relaxation.js";
import { RootAir, type Supposition } from "./supposition.js";
import { everyWayOf } from "./ways.js";

/** A lower bound on the objective of every plan there is for a problem. */
export interface Proof {
  /** [g] */
  readonly bound: number;
  /** The bound before anything was told apart [g]. */
  readonly rootBound: number;
  /** Relaxations solved. */
  readonly nodes: number;
}

export interface ProofOptions {
  /** Relaxations to solve at most. */
  readonly mostNodes?: number;
  /** Objective of a known plan [g]: nothing above it is looked at. */
  readonly value?: number;
  /** Gap at which to stop, as a share of the value. */
  readonly closeEnough?: number;
  readonly progress?: (bound: number, nodes: number) => void;
}

interface Node {
  readonly supposition: Supposition;
  readonly solved: Solved;
}

/** Finds a lower bound by telling apart, again and again, what costs the lowest relaxation most. */
export function boundOf(highs: Highs, prepared: Prepared, options: ProofOptions = {}): Proof {
  const { problem } = prepared;
  const { mostNodes = 60, value = Number.POSITIVE_INFINITY, closeEnough = 0.002 } = options;
  const kitchen = new KitchenBoxes(problem);
  const ways = problem.lots.map((lot) => everyWayOf(problem, lot, kitchen));
  const air = new RootAir(kitchen, ways);
  const root = air.root();
  const columns = new Columns(prepared, kitchen.optimist, ways, (lot) => air.ranges(root, lot));
  const relaxation = new Relaxation(highs, prepared, kitchen, air, columns);
  const brancher = new Brancher(kitchen, air, columns);
  let nodes = 1;
  const first = relaxation.solve(root);
  const open: Node[] = [{ supposition: root, solved: first }];
  let closed = value;
  while (open.length > 0 && nodes < mostNodes) {
    open.sort((a, b) => b.solved.value - a.solved.value);
    const { supposition, solved } = open.at(-1)!;
    options.progress?.(solved.value, nodes);
    if (solved.value >= value * (1 - closeEnough)) break;
    open.pop();
    const parts = brancher.split(supposition, solved);
    if (!parts) {
      closed = Math.min(closed, solved.value);
      continue;
    }
    for (const part of parts) {
      nodes++;
      const child = relaxation.solve(part);
      if (child.value < closed) {
        open.push({ supposition: part, solved: { ...child, value: Math.max(child.value, solved.value) } });
      }
    }
  }
  relaxation.dispose();
  const bound = Math.min(closed, ...open.map(({ solved }) => solved.value));
  return { bound, rootBound: first.value, nodes };
}
