import type { Commodity, Evidence, KindGuidance } from "@keepwright/catalogue";
import type { Ending } from "@keepwright/physics";
import type { Plan } from "@keepwright/planner";

export interface Amount<Unit extends string> {
  readonly value: number;
  readonly unit: Unit;
}

/** A life in days: 10 %, 50 % and 90 % of lots like it are past their best by then; and what ends it. */
export interface AnsweredLife {
  readonly early: number;
  readonly middle: number;
  readonly late: number;
  readonly unit: "d";
  readonly endedBy: Ending;
}

/** How far each process has come [0…1] when the first of them ends the lot. */
export interface EndingShare {
  readonly ending: Ending;
  readonly share: number;
}

type Stay = Plan["lots"][number]["stays"][number];

/** The best that can be done with it, alone, in one place or in a whole kitchen. */
export interface AnsweredPlace {
  readonly stays: readonly (Pick<Stay, "place" | "placeKind" | "wrap" | "moveWhen"> & {
    readonly name: string;
  })[];
  readonly vents: Plan["vents"];
  readonly life: AnsweredLife;
  /** First day it is ready to eat (0 = first day); null where it never is. */
  readonly readyOnDay: number | null;
  /** Effects that spoil eating there, by their names in the catalogue. */
  readonly effects: readonly string[];
}

/** A published figure that the answer stands on, with what is known of where it comes from. */
export interface AnsweredSource extends Omit<Evidence, "note"> {
  readonly figure: FigureName;
  readonly citation: string;
}

export const figureNames = [
  "temperature",
  "humidity",
  "life",
  "respiration",
  "ethylene",
  "sensitivity",
  "water",
  "chilling",
  "ripening",
  "decay",
] as const;
export type FigureName = (typeof figureNames)[number];

/** Signs, saving and season of a kind, with where their facts come from. */
export type AnsweredGuidance = Omit<KindGuidance, "id">;

/** Everything about one kind at stated conditions: what is computed, and the figures it is computed from. */
export interface ItemAnswer {
  readonly version: 1;
  readonly commodity: string;
  readonly names: Commodity["names"]["en"];
  readonly climacteric: boolean;
  readonly conditions: {
    readonly temperature: Amount<"°C">;
    readonly relativeHumidity: Amount<"%">;
    readonly ethylene: Amount<"µL/L">;
    readonly ripeness: Amount<"0 unripe, 1 ripe, 2 over-ripe">;
  };
  readonly recommended: {
    readonly temperature: { readonly low: number; readonly high: number; readonly unit: "°C" };
    readonly relativeHumidity: { readonly low: number; readonly high: number; readonly unit: "%" };
    readonly life: { readonly low: number; readonly high: number; readonly unit: "d" };
  };
  readonly respiration: Amount<"mg CO2/(kg h)"> & { readonly fromMemory: boolean };
  /** At its ripeness; and for kinds that ripen, at both ends. */
  readonly ethyleneProduction: Amount<"µL/(kg h)"> & {
    readonly unripe: number;
    readonly ripe: number;
    readonly fromMemory: boolean;
  };
  readonly life: AnsweredLife;
  readonly shares: readonly EndingShare[];
  /** Where it belongs in the kitchen asked about. */
  readonly belongs: AnsweredPlace;
  readonly kitchen: string;
  /** Alone in one place of each kind, wrapped as well as can be there: where it gets ripe first, then the longest life first. */
  readonly places: readonly AnsweredPlace[];
  /** What to do first, by name, as far as it agrees with how it is kept where it belongs. */
  readonly preparation: readonly string[];
  /** Safety cautions for this kind, whole and once it is cut, by name; words are made in the view. */
  readonly cautions: readonly string[];
  readonly sources: readonly AnsweredSource[];
  /** What is told of the kind beside what is computed, in one language; where the caller gave it. */
  readonly guidance?: AnsweredGuidance | undefined;
}
