import { litresPerHourInCubicMetrePerSecond } from "@keepwright/physics";
import { type Condition, partColumns } from "./axis.js";
import type { Range, VapourOption } from "./cells.js";
import type { Column } from "./columns.js";
import { leastVapour, mostVapour, type VapourGiven } from "./given.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { Entry, LinearModel } from "./linearModel.js";
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

/** Columns for the vapour [g/m³] of each box and the room at its most. */
export const densityColumns = (model: LinearModel, { mostDensity, mostAtLeast }: Supposition): number[] =>
  Array.from(mostDensity, (most, box) =>
    model.column(0, 1000 * most, 1000 * Math.min(most, mostAtLeast[box]!)),
  );

/**
 * Vapour in balance, where a box's at its most lies in a range. What lies in it on the first day must not give off more than its exchange, with the neighbour at its driest, and its coil carry away at the
 * most; below the driest surface drawers only add to the air they breathe with, so what they add may be left out. And when it is at its most, what ever lies in it or behind it must be able to give off
 * what its exchange carries away, with the neighbour at its own most, and its coil: what comes from a box behind is, where it is damper, less than all in that would give off at this density, and nothing where it is
 * drier. What would take vapour up counts as nothing.
 *
 * @param totals columns for the vapour of every box at its most
 * @param whole nothing that gives off vapour is missing among the placed
 */
export function vapourConditions(
  model: LinearModel,
  kitchen: KitchenBoxes,
  root: RootAir,
  driest: readonly number[],
  { vents }: Supposition,
  box: number,
  options: readonly VapourOption[],
  shares: readonly number[],
  totals: readonly number[],
  whole: boolean,
): Condition[][] {
  const { behind, neighbour, optimist } = kitchen;
  const { tree } = optimist;
  const next = neighbour[box]!;
  const coil = (scale / 1000) * tree.coilExchange[box]!;
  const coilDensity = coil > 0 ? tree.coilDensity[box]! : 0;
  const inGrams = ({ least, most }: Range): Range => ({ least: 1000 * least, most: 1000 * most });
  const own = partColumns(
    model,
    totals[box]!,
    shares,
    options.map(({ range }) => inGrams(range)),
  );
  const around = partColumns(
    model,
    totals[next]!,
    shares,
    options.map(() => inGrams({ least: root.leastDensity[next]!, most: root.mostDensity[next]! })),
  );
  return options.map(({ range: { least: level, most }, setting }, option) => {
    const litres = kitchen.exchangeAt(box, vents, setting);
    const conditions: Condition[] = [];
    if (most <= driest[box]!) {
      const beside = root.leastDensity[next]!;
      const carried = 1000 * (most >= beside ? litres.most : litres.least) * (most - beside);
      const given = (column: Column): number => givenAt(leastVapour(column, box), most);
      conditions.push({
        limit: carried + 1000 * coil * Math.max(0, most - coilDensity),
        atLeast: false,
        given,
      });
    }
    // How fast it changes is known but where several settings of its vent are told of as one.
    if (whole && litres.most === litres.least) {
      const given = (column: Column): number => Math.max(0, givenAt(mostVapour(column, behind[box]!), level));
      const terms: Entry[] = [
        [own[option]!, -(litres.most + coil)],
        [around[option]!, litres.most],
      ];
      conditions.push({ limit: -1000 * coil * coilDensity, atLeast: true, given, terms });
    }
    return conditions;
  });
}
