import type { GivenInStay } from "@keepwright/physics";
import type { Column } from "./columns.js";

/**
 * Ethylene [µL/h] that a lot dealt with by a column gives off into the boxes of a set, at the least at every time of a window [d]. Fruit gives off the more the riper;
 * what may or may not have moved counts where it surely is.
 */
export function leastEmission(
  { way, ripens }: Column,
  boxes: ReadonlySet<number>,
  from: number,
  to: number,
): number {
  const { gives } = way;
  const first = gives[0]!;
  const last = gives.at(-1)!;
  const arriving = (given: GivenInStay): number =>
    boxes.has(given.box) ? Math.min(given.arriving, given.ripe) : 0;
  const ripe = (given: GivenInStay): number => (boxes.has(given.box) ? given.ripe : 0);
  if (ripens.to === 0) return Math.min(...gives.map(arriving));
  if (gives.length === 1) return ripens.to <= from ? ripe(first) : arriving(first);
  if (to <= ripens.from) return arriving(first);
  if (from >= ripens.to) return ripe(last);
  return Math.min(arriving(first), ripe(last));
}

/** Vapour given off at the start, at the least, by what lies in a box: [m³/s], and that times the density [kg/m³] below which it gives off any. */
export function leastVapour({ way, members }: Column, box: number) {
  if (way.boxes[0] !== box) return { conductance: 0, supply: 0 };
  let conductance = Number.POSITIVE_INFINITY;
  let density = Number.POSITIVE_INFINITY;
  for (const { way: member } of members) {
    const given = member.gives[0]!.vapour;
    conductance = Math.min(conductance, given.conductance);
    density = Math.min(density, given.density);
  }
  return { conductance, supply: conductance * density };
}

/** At any time, at the most, by what ever lies in one of the boxes. */
export function mostVapour({ members }: Column, boxes: ReadonlySet<number>) {
  let conductance = 0;
  let density = 0;
  for (const { way } of members) {
    for (const given of way.gives) {
      if (!boxes.has(given.box)) continue;
      conductance = Math.max(conductance, given.vapour.conductance);
      density = Math.max(density, given.vapour.density);
    }
  }
  return { conductance, supply: conductance * density };
}

/** Ethylene [µL/h] that a lot dealt with by a column gives off into the boxes of a set, at the most at any time. */
export function mostEmission({ way, ripens }: Column, boxes: ReadonlySet<number>): number {
  let most = 0;
  for (const given of way.gives) {
    if (!boxes.has(given.box)) continue;
    most = Math.max(most, given.arriving, ripens.from === Number.POSITIVE_INFINITY ? 0 : given.ripe);
  }
  return most;
}
