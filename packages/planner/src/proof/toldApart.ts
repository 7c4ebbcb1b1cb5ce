import type { Axis } from "./axis.js";
import type { EthyleneCell, Range } from "./cells.js";
import type { Column } from "./columns.js";
import type { LotAir } from "./lotAir.js";
import { liesIn, type Stretch } from "./stretch.js";
import type { Supposition } from "./supposition.js";

/** How finely a relaxation tells the air apart: axes for the ethylene of each stretch and, after them, for the vapour of each box. */
export interface ToldApart {
  readonly supposition: Supposition;
  readonly stretches: readonly Stretch[];
  readonly cells: readonly (readonly EthyleneCell[])[];
  readonly densities: readonly (readonly Range[])[];
  readonly axes: readonly Axis[];
  /** A number of its own, from 1 up to `mostNumbers`, for every bound there has been. */
  readonly numberOf: (bound: string) => number;
}

/** More bounds than there ever are. */
export const mostNumbers = 2 ** 20;

/** What bounds the ethylene of some boxes, and the vapour of one. */
interface CellOf extends EthyleneCell {
  readonly boxes: ReadonlySet<number>;
}
interface DensityOf {
  readonly box: number;
  readonly most: number;
}

/** Airs a column may lie in, and the axes they belong to. One of each that bounds nothing where it moves or lies in the open room. */
export function airsOf(column: Column, { stretches, cells, densities, numberOf }: ToldApart) {
  const stretchAxis = stretches.findIndex((one) => liesIn(column, one));
  if (stretchAxis < 0)
    return {
      numberOf: () => 0,
      cells: [undefined],
      stretchAxis,
      drynesses: [undefined],
      densityAxis: -1,
    } as const;
  const { boxes } = stretches[stretchAxis]!;
  const box = column.way.boxes[0]!;
  const cellNumbers = cells[stretchAxis]!.map(({ always, later }) =>
    numberOf(`${always.least} ${later.least}`),
  );
  const densityNumbers = densities[box]!.map(({ most }) => numberOf(`${most}`));
  return {
    numberOf: (cell: number, density: number): number =>
      cellNumbers[cell]! * mostNumbers + densityNumbers[density]!,
    cells: cells[stretchAxis]!.map((cell): CellOf => ({ ...cell, boxes })),
    stretchAxis,
    drynesses: densities[box]!.map(({ most }): DensityOf => ({ box, most })),
    densityAxis: stretches.length + box,
  };
}

/** The air within a cell of ethylene and a range of vapour. */
export function airWith(air: LotAir, cell: CellOf | undefined, density: DensityOf | undefined): LotAir {
  if (!cell || !density) return air;
  const { boxes, always, later } = cell;
  const last = air.leastEthylene.length - 1;
  return {
    ...air,
    leastEthylene: air.leastEthylene.map((levels, window) => {
      const { least } = window === last ? later : always;
      return levels.map((now, box) => (boxes.has(box) ? Math.max(now, least) : now));
    }),
    mostDensity: air.mostDensity.map((now, box) => (box === density.box ? Math.min(now, density.most) : now)),
  };
}
