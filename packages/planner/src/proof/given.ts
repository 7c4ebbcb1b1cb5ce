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

/** Vapour given off: conductance [m³/s], and that times the density [kg/m³] at which nothing is given off. */
export interface VapourGiven {
  readonly conductance: number;
  readonly supply: number;
}

/** Vapour given off at the start, at the least, by what lies in a box. */
export function leastVapour({ way, members }: Column, box: number): VapourGiven {
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
export function mostVapour({ members }: Column, boxes: ReadonlySet<number>): VapourGiven {
  let conductance = 0;
  let density = 0;
  for (const { way } of members) {
    for (const given of way.gives) {
      if (!boxes.has(given.box)) continue;
      conductance = Math.max(conductance, way.apart ? given.vapour.apart : given.vapour.conductance);
      density = Math.max(density, given.vapour.density);
    }
  }
  return { conductance, supply: conductance * density };
}

/**
 * Ethylene [µL/h] that a lot dealt with by a column gives off into the boxes of a set, at the most up to a day [d]. What has not been able to ripen far by then gives off what its ripeness at the most gives
 * off: straight in the logarithm (physics' `productionAtRipeness`).
 */
export function mostEmission(
  { way, ripens, haste }: Column,
  boxes: ReadonlySet<number>,
  until: number,
): number {
  const { ripeness } = way.lot;
  const ripening = ripens.to > 0 && ripeness < 1;
  const share = ripening ? Math.min(1, (haste * until) / (1 - ripeness)) : 1;
  let most = 0;
  way.gives.forEach((given, stay) => {
    if (!boxes.has(given.box)) return;
    // It comes to a later place ripe, and may be there by then.
    if (stay > 0) most = Math.max(most, ripens.from <= until ? given.ripe : 0);
    else most = Math.max(most, given.arriving, given.arriving * (given.ripe / given.arriving) ** share);
  });
  return most;
}
