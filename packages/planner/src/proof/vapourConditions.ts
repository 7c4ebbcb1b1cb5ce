import { litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import type { Condition } from "./axis.js";
import type { Range } from "./cells.js";
import type { Column } from "./columns.js";
import { leastVapour, mostVapour, type VapourGiven } from "./given.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { RootAir } from "./rootAir.js";
import type { Supposition } from "./supposition.js";

/** Kilograms a second in grams an hour times litres in a cubic metre: what the rows are written in, for the solver minds numbers far from 1. */
const scale = 1000 * litresPerHourInCubicMetrePerSecond;

/** Share below saturation at which a box surely does not condense. */
const rounding = 1e-9;

/**
 * By box: the lowest density [kg/m³] at which anything in it or behind it gives off no vapour, or at which water condenses in one of these boxes. Below it nothing there condenses and
 * everything only adds: a drawer behind can then be no drier than the box, for neither what lies in it nor condensation would make it so (only main air has a coil).
 */
export const driestSurfaces = (columns: readonly Column[], { behind, optimist }: KitchenBoxes): number[] =>
  behind.map((boxes) => {
    let least = Number.POSITIVE_INFINITY;
    for (const box of boxes) least = Math.min(least, optimist.tree.saturationDensity[box]! * (1 - rounding));
    for (const { members } of columns) {
      for (const { way } of members) {
        for (const given of way.gives)
          if (boxes.has(given.box)) least = Math.min(least, given.vapour.density);
      }
    }
    return least;
  });

/** Vapour given off at a density of the box's air. */
const givenAt = ({ conductance, supply }: VapourGiven, density: number): number =>
  (supply - density * conductance) * scale;

/**
 * Vapour in balance, where a box's at its most lies in a range. What lies in it on the first day must not give off more than its exchange, at its fastest and with the neighbour at its driest,
 * and its coil carry away at the most; and what ever lies in it or behind it must be able to give off what they carry away, at their slowest, at the least it is supposed to reach. Below the driest
 * surface drawers only add to the air they breathe with, so what they add may be left out of the first.
 *
 * @param whole nothing that gives off vapour is missing among the placed
 */
export function vapourConditions(
  kitchen: KitchenBoxes,
  root: RootAir,
  driest: readonly number[],
  { vents, mostDensity }: Supposition,
  box: number,
  { least: level, most }: Range,
  whole: boolean,
): Condition[] {
  const { behind, neighbour, optimist } = kitchen;
  const { tree } = optimist;
  const exchange = kitchen.exchange(vents);
  const carried = (litresPerHour: number, density: number, around: number): number =>
    1000 * litresPerHour * (density - around) +
    scale * tree.coilExchange[box]! * Math.max(0, density - tree.coilDensity[box]!);
  const next = neighbour[box]!;
  const conditions: Condition[] = [];
  if (most <= driest[box]!) {
    const around = root.leastDensity[next]!;
    const litres = most >= around ? exchange.most[box]! : exchange.least[box]!;
    const given = (column: Column): number => givenAt(leastVapour(column, box), most);
    conditions.push({ limit: carried(litres, most, around), atLeast: false, given });
  }
  const around = mostDensity[next]!;
  const litres = level >= around ? exchange.least[box]! : exchange.most[box]!;
  const limit = carried(litres, level, around);
  if (whole && limit > 0 && level <= driest[box]!) {
    const given = (column: Column): number => givenAt(mostVapour(column, behind[box]!), level);
    conditions.push({ limit, atLeast: true, given });
  }
  return conditions;
}
