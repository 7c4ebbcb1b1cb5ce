import type { Axis } from "./axis.js";
import type { EthyleneOption, VapourOption } from "./cells.js";
import type { Column } from "./columns.js";
import type { LotAir } from "./lotAir.js";
import type { Stretch } from "./stretch.js";
import type { Supposition } from "./supposition.js";

/** How finely a relaxation tells the air apart: options of the ethylene of every stretch and of the vapour of every box, and their axes; those of ethylene come first, those of vapour after them. */
export interface ToldApart {
  readonly supposition: Supposition;
  readonly stretches: readonly Stretch[];
  readonly cells: readonly (readonly EthyleneOption[])[];
  readonly densities: readonly (readonly VapourOption[])[];
  readonly axes: readonly Axis[];
  /** A number of its own, above 0, for every air there has been. */
  readonly airNumber: (air: Pick<AirOption, "ethylene" | "vapour">) => number;
}

/** An air a column may lie in. */
export interface AirOption {
  /** Of the stretch's ethylene. */
  readonly axis: number;
  readonly boxes: ReadonlySet<number>;
  readonly cell: number;
  readonly density: number;
  readonly box: number;
  /** The same number for the same air. */
  readonly number: number;
  readonly ethylene: EthyleneOption;
  readonly vapour: VapourOption;
}

/** The box whose air a column pays for by option; -1 where it moves or lies in the open room. */
export const payingBox = ({ way }: Column, size: number): number =>
  way.boxes.length === 1 && way.boxes[0]! < size ? way.boxes[0]! : -1;

/** Airs of a box: a cell of its stretch's ethylene and a range of its vapour, of the same setting of its vent. */
export function airsOf(box: number, { stretches, cells, densities, airNumber }: ToldApart): AirOption[] {
  const axis = stretches.findIndex(({ boxes }) => boxes.has(box));
  const stretch = stretches[axis]!;
  return cells[axis]!.flatMap((ethylene, cell) =>
    densities[box]!.flatMap((vapour, density): AirOption[] => {
      if (stretch.box === box && ethylene.setting !== vapour.setting) return [];
      const air = { axis, cell, density, box, boxes: stretch.boxes, ethylene, vapour };
      return [{ ...air, number: airNumber(air) }];
    }),
  );
}

/** An air milder than any of a box's, and beside it one with as much ethylene as any and one as dry as any: what costs the same in them costs no less in any of the box's. */
export interface Corners {
  readonly mildest: AirOption;
  readonly mostEthylene: AirOption;
  readonly driest: AirOption;
}

export function cornersOf(
  airs: readonly AirOption[],
  { airNumber }: Pick<ToldApart, "airNumber">,
): Corners | undefined {
  const [any] = airs;
  if (!any) return undefined;
  const levels = (of: (air: AirOption) => number): { least: number; most: number } => {
    const all = airs.map(of);
    return { least: Math.min(...all), most: Math.max(...all) };
  };
  const always = levels(({ ethylene }) => ethylene.always.least);
  const later = levels(({ ethylene }) => ethylene.later.least);
  const vapour = levels(({ vapour: { range } }) => range.most);
  const corner = (which: "least" | "most", most: number): AirOption => {
    const at = (level: { least: number; most: number }) => ({ least: level[which], most: level[which] });
    const air = {
      ...any,
      ethylene: { ...any.ethylene, always: at(always), later: at(later) },
      vapour: { ...any.vapour, range: { least: most, most } },
    };
    return { ...air, number: airNumber(air) };
  };
  return {
    mildest: corner("least", vapour.most),
    mostEthylene: corner("most", vapour.most),
    driest: corner("least", vapour.least),
  };
}

/** The air within a cell of ethylene and a range of vapour. */
export function airWith(air: LotAir, { box: here, boxes, ethylene, vapour }: AirOption): LotAir {
  const last = air.leastEthylene.length - 1;
  return {
    ...air,
    leastEthylene: air.leastEthylene.map((levels, window) => {
      const { least } = window === last ? ethylene.later : ethylene.always;
      return levels.map((now, box) => (boxes.has(box) ? Math.max(now, least) : now));
    }),
    mostDensity: air.mostDensity.map((now, box) => (box === here ? Math.min(now, vapour.range.most) : now)),
  };
}
