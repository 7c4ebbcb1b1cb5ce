import type { Wrap, WrapId } from "@keepwright/catalogue";
import type { LotPace } from "../produce/atPace.js";
import type { Ending, LotForm, LotState } from "../produce/lotState.js";
import type { Produce } from "../produce/produce.js";

/** Where a box's air goes: another box by its index, or the room. */
export type Neighbour = number | "room";

/** A well-mixed volume of air: a refrigerator's main air, a drawer, a cupboard. A box's neighbour comes before it in the list. */
export interface AirBox {
  readonly name: string;
  readonly volumeLitres: number;
  /** Mean air temperature [°C]. */
  readonly temperature: number;
  readonly exchange: { readonly with: Neighbour; readonly litresPerHour: number };
  /** A cold coil that dries the air: air passed over it [L/h] and the coil's temperature [°C]. It takes out vapour, not ethylene. */
  readonly coil?: { readonly temperature: number; readonly litresPerHour: number };
}

/** The air of the room, taken as given. */
export interface RoomAir {
  readonly temperature: number;
  /** 0…1 */
  readonly relativeHumidity: number;
  /** µL/L */
  readonly ethylene: number;
}

/** When the lot leaves this stay for the next: on a day [d from start], when ripe, or never. */
export type StayEnd = { readonly day: number } | "ripe" | "never";

export interface SimulatedStay {
  /** Index into the boxes, or "room" for the open room. */
  readonly box: Neighbour;
  /** The produce's own temperature there [°C] (a door shelf is warmer than the air it shares). */
  readonly temperature: number;
  /** The temperature safe time is counted by [°C], where another is believed than the produce has; absent: its own. */
  readonly believedTemperature?: number;
  readonly wrap: WrapId;
  readonly lit: boolean;
  readonly until: StayEnd;
}

export interface SimulatedLot {
  readonly produce: Produce;
  readonly kilograms: number;
  readonly form: LotForm;
  /** Ripeness on arrival, 0…2. */
  readonly ripeness: number;
  /** Share of its storage life already spent on arrival, −1…<1; below 0 it arrives fresher than is usual. */
  readonly spent: number;
  /** The share safe time is counted by, where another is believed; absent: that one. */
  readonly believedSpent?: number;
  /** Its whole state at the start, where it is known: of a lot carried over from another simulation. Ripeness and share spent then say nothing of it. */
  readonly state?: Readonly<LotState> | undefined;
  /** Absent: as the middle lot of its kind. */
  readonly pace?: LotPace;
  readonly stays: readonly SimulatedStay[];
  /**
   * What of it is kept out of the air of its boxes, to find out what that does to the others: the ethylene or the vapour it gives off. With
   * both it is to the others as if it were gone. For `simulate` alone.
   */
  readonly withheld?: { readonly ethylene?: boolean; readonly vapour?: boolean };
}

export interface Simulation {
  readonly room: RoomAir;
  readonly boxes: readonly AirBox[];
  readonly lots: readonly SimulatedLot[];
  /** Days simulated with full coupling; beyond it each lot is carried on to its end in what the others gave off last. */
  readonly horizonDays: number;
  /** Length of a step [d]; 0.25 unless told. */
  readonly stepDays?: number;
  /** The wraps meant by the names in the stays; those of the catalogue that comes with the program unless told. */
  readonly wraps?: ReadonlyMap<WrapId, Wrap>;
  /** "ends": leave out what is kept for each whole day (`daily`, `quality`, the boxes' series come back empty). */
  readonly outcome?: "whole" | "ends";
}

export interface LotOutcome {
  /** Days from the start until the lot ends (may lie beyond the horizon), and by what. */
  readonly endDay: number;
  readonly endedBy: Ending;
  /** True when the end lies beyond the horizon and was carried on. */
  readonly beyondHorizon: boolean;
  /** First day it is ready to eat (may lie beyond the horizon); 0 when it arrives so; Infinity when it never gets there before it ends. */
  readonly ripeDay: number;
  /** Day on which each stay begins, same order as the stays; may lie beyond the horizon (Infinity when never reached). */
  readonly stayStarts: readonly number[];
  /** State at each whole day 0…horizon. */
  readonly daily: readonly LotState[];
  /** Quality 0…1 at each whole day 0…horizon. */
  readonly quality: readonly number[];
}

export interface BoxOutcome {
  /** Relative humidity 0…1 and ethylene [µL/L] at each whole day 0…horizon. */
  readonly relativeHumidity: readonly number[];
  readonly ethylene: readonly number[];
  /** Water condensed out of the box's air over the horizon [kg] (on walls and produce, not on the coil). */
  readonly condensed: number;
}

export interface SimulationOutcome {
  readonly lots: readonly LotOutcome[];
  readonly boxes: readonly BoxOutcome[];
}
