import { type AirBox, Optimist } from "@keepwright/physics";
import { type VentSetting, ventSettings } from "../problem/kitchen.js";
import type { Problem } from "../problem/problem.js";
import { roomAir } from "../problem/simulationOf.js";

/** Settings each vent may have. */
export type AllowedVents = readonly (readonly VentSetting[])[];

/** The air of a kitchen's boxes as far as the proof needs it: what lies behind what, and how fast the air changes at the least and at the most. */
export interface BoxExchange {
  /** [L/h] by box. */
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** A kitchen's boxes of air: which breathes with which. */
export class KitchenBoxes {
  readonly problem: Problem;
  readonly size: number;
  /** Box that each breathes with; the number of boxes for the room. */
  readonly neighbour: readonly number[];
  /** Each box with all that breathe with it, directly or not. */
  readonly behind: readonly ReadonlySet<number>[];
  readonly optimist: Optimist;
  readonly boxes: readonly AirBox[];

  constructor(problem: Problem) {
    this.problem = problem;
    this.boxes = problem.boxes(problem.vents.map(() => ventSettings[0]!));
    this.size = this.boxes.length;
    this.neighbour = this.boxes.map(({ exchange }) => (exchange.with === "room" ? this.size : exchange.with));
    const behind = this.boxes.map((_, box) => new Set([box]));
    for (let box = this.size - 1; box >= 0; box--) {
      const next = this.neighbour[box]!;
      if (next < this.size) for (const one of behind[box]!) behind[next]!.add(one);
    }
    this.behind = behind;
    this.optimist = new Optimist(this.boxes, roomAir(problem.kitchen), problem.catalogue.wraps);
  }

  /** Index of the box of a place; the number of boxes for the open room. */
  boxOf(place: number): number {
    const { box } = this.problem.places[place]!;
    return box === "room" ? this.size : box;
  }

  /** Which of the vents that can be set is a box's own; undefined when it has none. */
  ventOf(box: number): number | undefined {
    const vent = this.problem.vents.findIndex((place) => this.boxOf(place) === box);
    return vent < 0 ? undefined : vent;
  }

  /** Litres an hour between which a box's exchange lies with its vent so. */
  exchangeAt(
    box: number,
    vents: AllowedVents,
    setting: VentSetting | undefined,
  ): { least: number; most: number } {
    const vent = this.ventOf(box);
    const { least, most } = this.exchange(
      vent === undefined || setting === undefined ? vents : vents.with(vent, [setting]),
    );
    return { least: least[box]!, most: most[box]! };
  }

  everyVent(): AllowedVents {
    return this.problem.vents.map(() => ventSettings);
  }

  exchange(vents: AllowedVents): BoxExchange {
    const least = new Float64Array(this.size).fill(Number.POSITIVE_INFINITY);
    const most = new Float64Array(this.size);
    for (const setting of ventSettings) {
      const settings = vents.map((allowed) => (allowed.includes(setting) ? setting : allowed[0]!));
      this.problem.boxes(settings).forEach(({ exchange }, box) => {
        least[box] = Math.min(least[box]!, exchange.litresPerHour);
        most[box] = Math.max(most[box]!, exchange.litresPerHour);
      });
    }
    return { least, most };
  }
}
