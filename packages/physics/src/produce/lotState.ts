/**
 * What changes in a lot as days pass. Each entry but ripeness and water is a dose: 0 on the plant's last good day,
 * 1 when that process alone has ended it. Stored as one Float64Array so that the stepper stays fast; read it by name.
 */
export const stateNames = [
  /** Water lost, as a fraction of the mass on arrival. */
  "waterLost",
  /** Carbon lost by respiration, as a fraction of the mass on arrival. */
  "carbonLost",
  /** Senescence dose. */
  "senescence",
  /** Chilling dose; the injury shows after warming. */
  "chilling",
  /** Ripeness: 0 mature-unripe, 1 ready to eat, 2 over-ripe. Stays as it arrived in kinds that do not ripen. */
  "ripeness",
  /** Decay dose: 1 is the median time to visible mould or rot. */
  "decay",
  /** Sprouting dose. */
  "sprouting",
  /** Dose of the named ethylene injury that is furthest on. */
  "ethyleneInjury",
  /** Quality [0…1] lost to effects that spoil eating. */
  "eatingHarm",
  /** Share of the time allowed by a safety limit that is used up. */
  "safety",
] as const;
export type StateName = (typeof stateNames)[number];

/** Position of each state in the array. */
export const at = Object.fromEntries(stateNames.map((name, index) => [name, index])) as Record<
  StateName,
  number
>;

export type LotState = Float64Array;

/** Why a lot ended. "senescence" includes the ethylene that speeds it; the blame for that is found by leaving neighbours out. */
export const endings = [
  "senescence",
  "water",
  "chilling",
  "decay",
  "over-ripeness",
  "sprouting",
  "ethylene injury",
  "safety",
] as const;
export type Ending = (typeof endings)[number];

/** What does not change: how the lot arrived and was prepared. */
export interface LotForm {
  readonly cut: boolean;
  /** Leaves left on a root. */
  readonly tops: boolean;
  /** Washed and not dried. */
  readonly wet: boolean;
}

/** The air right around the lot (inside its wrap) and what falls on it. */
export interface Conditions {
  readonly temperature: number;
  /** Vapour pressure of that air [Pa]. */
  readonly vapourPressure: number;
  /** Ethylene in that air [µL/L]. */
  readonly ethylene: number;
  /** Free water on the surface, 0 dry … 1 wet. */
  readonly wetness: number;
  readonly lit: boolean;
  /** Share of transpired water replaced by uptake through a stem in water, 0…1. */
  readonly uptake: number;
}
