import { heldEthylene } from "@keepwright/physics";
import { type VentSetting, ventSettings } from "../problem/kitchen.js";
import type { KitchenBoxes } from "./kitchenBoxes.js";
import type { RootAir } from "./rootAir.js";
import type { Stretch } from "./stretch.js";
import type { Supposition } from "./supposition.js";

/** Lowest ethylene [µL/L] that rates tell apart (physics' `heldEthylene`). */
export const leastToldApart = heldEthylene(0);

/** Values from one to another. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** Where the ethylene [µL/L] of a stretch at its least lies: of all time, and from the last window on. */
export interface EthyleneCell {
  readonly always: Range;
  readonly later: Range;
}

/** How the vent of a box is set, where it has one to set. */
interface Set {
  readonly setting: VentSetting | undefined;
}
export interface EthyleneOption extends EthyleneCell, Set {}
/** A range of the vapour [kg/m³] of a box at its most. */
export interface VapourOption extends Set {
  readonly range: Range;
}

/** Share of an option from which it is worth telling apart further. Declared. */
const leastShare = 0.02;

/** Ratio of a cell's ethylene, and share of a box's whole range of vapour, below which nothing is told apart further. Declared. */
const narrowRatio = 1.05;
const narrowShare = 0.01;

/** How often cells are halved before anything is known of where a relaxation lies; ranges of vapour once. Declared. */
const halvedBefore = 2;

/** Cells of a stretch's ethylene, and ranges of a box's vapour, at most, whatever its vent. Declared: each costs time in every relaxation. */
const mostCells = 16;
const mostRanges = 12;

const middle = ({ least, most }: Range): number => Math.sqrt(Math.max(leastToldApart, least) * most);
const ratio = ({ least, most }: Range): number => most / Math.max(leastToldApart, least);
const halves = ({ least, most }: Range, at: number): Range[] => [
  { least, most: at },
  { least: at, most },
];

/** How finely the air of a kitchen is told apart: options that together leave nothing out, halved where a relaxation lies between them. */
export class Cells {
  /** By stretch. */
  readonly ethylene: EthyleneOption[][];
  /** By box. */
  readonly density: VapourOption[][];
  readonly #kitchen: KitchenBoxes;
  readonly #whole: readonly Range[];

  constructor(
    kitchen: KitchenBoxes,
    air: RootAir,
    stretches: readonly Stretch[],
    mostEthylene: Float64Array,
    room: number,
  ) {
    this.#kitchen = kitchen;
    const boxes = Array.from({ length: kitchen.size }, (_, box) => box);
    const settings = (box: number): readonly (VentSetting | undefined)[] =>
      kitchen.ventOf(box) === undefined ? [undefined] : ventSettings;
    this.ethylene = stretches.map(({ box }) => {
      const all = { least: room, most: Math.max(room, mostEthylene[box]!) };
      return settings(box).map((setting) => ({ always: all, later: all, setting }));
    });
    this.#whole = boxes.map((box) => ({
      least: Math.min(air.leastDensity[box]!, air.mostDensity[box]!),
      most: air.mostDensity[box]!,
    }));
    this.density = boxes.map((box) =>
      settings(box).map((setting) => ({ range: this.#whole[box]!, setting })),
    );
    for (let round = 0; round < halvedBefore; round++)
      this.refine(
        this.ethylene.map((options) => options.map(() => 1)),
        round === 0 ? this.density.map((options) => options.map(() => 1)) : [],
      );
  }

  /** Options of a stretch's ethylene that a supposition leaves. */
  ethyleneIn(which: number, { box }: Stretch, supposition: Supposition): EthyleneOption[] {
    const { leastEthylene, leastAtMost } = supposition;
    const last = leastEthylene.length - 1;
    const always = {
      least: Math.min(...leastEthylene.map((levels) => levels[box]!)),
      most: leastAtMost.at(-1)![box]!,
    };
    const later = { least: leastEthylene[last]![box]!, most: leastAtMost[last]![box]! };
    return this.ethylene[which]!.flatMap((cell) => {
      const one = { ...cell, always: within(cell.always, always), later: within(cell.later, later) };
      const empty = one.always.least > one.always.most || one.later.least > one.later.most;
      return empty || one.later.most < one.always.least || !this.#allowed(box, cell, supposition)
        ? []
        : [one];
    });
  }

  densityIn(box: number, supposition: Supposition): VapourOption[] {
    const { mostDensity, mostAtLeast } = supposition;
    return this.density[box]!.flatMap((option) => {
      const range = within(option.range, { least: mostAtLeast[box]!, most: mostDensity[box]! });
      return range.least > range.most || !this.#allowed(box, option, supposition)
        ? []
        : [{ ...option, range }];
    });
  }

  #allowed(box: number, { setting }: Set, { vents }: Supposition): boolean {
    const vent = this.#kitchen.ventOf(box);
    return vent === undefined || setting === undefined || vents[vent]!.includes(setting);
  }

  /** Halves what has a share. Says whether anything was. */
  refine(ethylene: readonly (readonly number[])[], density: readonly (readonly number[])[]): boolean {
    let refined = false;
    const halved = <One>(
      cells: One[],
      shares: readonly number[],
      most: number,
      halve: (cell: One) => One[],
    ): One[] => {
      let room = most - cells.length;
      return cells.flatMap((cell, at) => {
        const parts = (shares[at] ?? 0) > leastShare && room > 0 ? halve(cell) : [cell];
        if (parts.length > 1) refined = true;
        room -= parts.length - 1;
        return parts;
      });
    };
    ethylene.forEach((shares, which) => {
      this.ethylene[which] = halved(this.ethylene[which]!, shares, mostCells, halvedCell);
    });
    density.forEach((shares, box) => {
      const { least, most } = this.#whole[box]!;
      this.density[box] = halved(this.density[box]!, shares, mostRanges, (option) => {
        const { range } = option;
        return range.most - range.least > narrowShare * (most - least)
          ? halves(range, (range.least + range.most) / 2).map((half) => ({ ...option, range: half }))
          : [option];
      });
    });
    return refined;
  }
}

const within = (one: Range, other: Range): Range => ({
  least: Math.max(one.least, other.least),
  most: Math.min(one.most, other.most),
});

/** A cell halved where it is widest; what cannot be (less later than always) left out. */
function halvedCell(cell: EthyleneOption): EthyleneOption[] {
  const { always, later, setting } = cell;
  if (Math.max(ratio(always), ratio(later)) < narrowRatio) return [cell];
  const parts =
    ratio(later) > ratio(always)
      ? halves(later, middle(later)).map((part) => ({ always, later: part }))
      : halves(always, middle(always)).map((part) => ({ always: part, later }));
  return parts
    .map((part) => ({
      setting,
      always: { least: part.always.least, most: Math.min(part.always.most, part.later.most) },
      later: { least: Math.max(part.later.least, part.always.least), most: part.later.most },
    }))
    .filter(({ always: first, later: then }) => first.least <= first.most && then.least <= then.most);
}
