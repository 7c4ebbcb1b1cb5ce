import type { KitchenBoxes } from "./kitchenBoxes.js";

/** A stretch of air: a box that breathes with the room, with all behind it. Nothing in it meets less ethylene than that box holds. */
export interface Stretch {
  readonly box: number;
  readonly boxes: ReadonlySet<number>;
}

export const stretchesOf = ({ neighbour, behind, size }: KitchenBoxes): Stretch[] =>
  neighbour.flatMap((next, box) => (next === size ? [{ box, boxes: behind[box]! }] : []));
