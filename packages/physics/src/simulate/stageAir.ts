import type { AirTree } from "../climate/airTree.js";

/** Vapour density [kg/m³] and ethylene [µL/L] of each box and, last, of the room. */
export interface BoxAir {
  readonly density: Float64Array;
  readonly ethylene: Float64Array;
}

export const boxAir = (boxes: number): BoxAir => ({
  density: new Float64Array(boxes + 1),
  ethylene: new Float64Array(boxes + 1),
});

/** The air of every box at one stage of a step, and what the lots give off into it. */
export interface StageAir extends BoxAir {
  /** Produce in each box together: it gives off supply − conductance · density [kg/s], and emission [µL/h]. */
  readonly conductance: Float64Array;
  readonly supply: Float64Array;
  readonly emission: Float64Array;
  /** Water condensing out of each box's air [kg/s]. */
  readonly condensing: Float64Array;
}

export const stageAir = (tree: AirTree): StageAir => ({
  density: new Float64Array(tree.size + 1),
  ethylene: new Float64Array(tree.size + 1),
  conductance: new Float64Array(tree.size),
  supply: new Float64Array(tree.size),
  emission: new Float64Array(tree.size),
  condensing: new Float64Array(tree.size),
});
