import type { WrapId } from "@keepwright/catalogue";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import type { Programme, ProgrammeStay } from "../problem/programme.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";
import { suitableWraps } from "../rules/suitableWraps.js";

/** Ways to prepare a lot: leaves off or on, dried or wet; one way for most lots. */
export type Preparation = Pick<Programme, "leavesOff" | "dried">;

export function preparations(lot: BoundLot): Preparation[] {
  const leaves = lot.form.tops ? [true, false] : [false];
  const drying = lot.form.wet ? [true, false] : [false];
  return leaves.flatMap((leavesOff) => drying.map((dried) => ({ leavesOff, dried })));
}

/** Every place a lot may lie in, in every wrap it may have there, until it is eaten. */
export function singleStays(problem: Problem, lot: BoundLot): ProgrammeStay[] {
  const wraps = suitableWraps(lot, problem.kitchen, problem.catalogue.wraps);
  return allowedPlaces(lot, problem.places).flatMap(({ index }) =>
    wraps.map((wrap): ProgrammeStay => ({ place: index, wrap, until: "never" })),
  );
}

/** Here until ripe, then there. */
export const untilRipe = (place: number, wrap: WrapId, then: ProgrammeStay): readonly ProgrammeStay[] => [
  { place, wrap, until: "ripe" },
  then,
];

/** It ripens, and is not ripe yet: moving it once ripe may pay. */
export const stillRipens = (lot: BoundLot): boolean =>
  lot.produce.ripening !== undefined && lot.ripeness < 1 && !lot.form.cut;
