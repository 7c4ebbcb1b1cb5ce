import type { WrapId } from "@keepwright/catalogue";
import { at as position } from "@keepwright/physics";
import type { BoundLot } from "../problem/bindHaul.js";
import type { Problem } from "../problem/problem.js";
import { type Programme, type ProgrammeStay, programmeKey, programmeWith } from "../problem/programme.js";
import { allowedPlaces } from "../rules/cutInRefrigerator.js";
import { standsThere, suitableWraps } from "../rules/suitableWraps.js";

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
  return allowedPlaces(lot, problem.places).flatMap(({ index, place }) =>
    wraps
      .filter((wrap) => standsThere(wrap, place.kind))
      .map((wrap): ProgrammeStay => ({ place: index, wrap, until: "never" })),
  );
}

/** Leaves on and as wet as it is: what was to be done to it has been done. */
const untouched: Preparation = { leavesOff: false, dried: false };

/** Whether a lot may lie so: in a place it may lie in, in a wrap it may have. */
export function mayLie(
  problem: Problem,
  lot: BoundLot,
  { place, wrap }: Pick<ProgrammeStay, "place" | "wrap">,
): boolean {
  return (
    allowedPlaces(lot, problem.places).some(({ index }) => index === place) &&
    standsThere(wrap, problem.places[place]!.place.kind) &&
    suitableWraps(lot, problem.kitchen, problem.catalogue.wraps).includes(wrap)
  );
}

/** The moves an earlier plan had before it, and left as it lies; neither where it may not lie so, nothing for what has just come home. */
export function presentProgrammes(problem: Problem, { carried, ...lot }: BoundLot): Programme[] {
  if (!carried) return [];
  const ways: (readonly ProgrammeStay[])[] = [
    carried.remainder,
    [{ place: carried.lies.place, wrap: carried.lies.wrap, until: "never" }],
  ];
  const allowed = ways
    .filter((stays) => stays.every((stay) => mayLie(problem, lot, stay)))
    .map((stays) => programmeWith(untouched, stays));
  return [...new Map(allowed.map((one) => [programmeKey(one), one])).values()];
}

/** The same lot once it is ripe. */
export function onceRipe(lot: BoundLot): BoundLot {
  if (!lot.carried) return { ...lot, ripeness: 1 };
  const state = lot.carried.state.slice();
  state[position.ripeness] = 1;
  return { ...lot, ripeness: 1, carried: { ...lot.carried, state, key: `ripe ${lot.carried.key}` } };
}

/** Here until ripe, then there. */
export const untilRipe = (place: number, wrap: WrapId, then: ProgrammeStay): readonly ProgrammeStay[] => [
  { place, wrap, until: "ripe" },
  then,
];

/** Here until a day, then on. */
export const untilDay = (
  { place, wrap }: ProgrammeStay,
  day: number,
  then: readonly ProgrammeStay[],
): readonly ProgrammeStay[] => [{ place, wrap, until: { day } }, ...then];

/**
 * Days on which it may pay to move what is wanted for a day: every planned one before it. Only fruit that still ripens has any: it may be held
 * first and brought out to ripen.
 */
export function moveDays({ household }: Problem, lot: BoundLot): number[] {
  if (!lot.wish || !stillRipens(lot)) return [];
  const { first, last } = lot.wish;
  const wanted = Number.isFinite(last) ? last : first;
  const most = Math.min(wanted - 1, household.days - 1);
  return Array.from({ length: Math.max(0, most) }, (_, before) => before + 1);
}

/** It ripens, and is not ripe yet: moving it once ripe may pay. */
export const stillRipens = (lot: BoundLot): boolean =>
  lot.produce.ripening !== undefined && lot.ripeness < 1 && !lot.form.cut;
