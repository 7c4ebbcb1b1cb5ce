/** Values against temperature [°C], ascending; interpolated in the logarithm, never extrapolated without saying so. */
export interface TemperatureTable {
  readonly temperatures: readonly number[];
  readonly values: readonly number[];
}

/** A named ethylene injury: complete after `days` at `temperature` in `concentration`; none at or below `onlyAbove`. */
export interface EthyleneInjuryConstants {
  readonly effect: string;
  readonly concentration: number;
  readonly days: number;
  readonly temperature: number;
  readonly onlyAbove: number;
}

/** An effect that spoils eating: full `loss` of quality after `days` inside the window (below, above) [°C]. */
export interface EatingEffect {
  readonly effect: string;
  readonly below: number;
  readonly above: number;
  readonly days: number;
  readonly loss: number;
}
