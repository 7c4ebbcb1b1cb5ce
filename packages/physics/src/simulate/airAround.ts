import { wetnessOf } from "../climate/wetness.js";
import type { Conditions } from "../produce/lotState.js";
import type { CompiledStay } from "./compiledStay.js";

/** Conditions around a lot, rewritten at every stage so that nothing is allocated in the inner loop. */
export type MutableConditions = { -readonly [Name in keyof Conditions]: Conditions[Name] };

export const blankConditions = (): MutableConditions => ({
  temperature: 0,
  vapourPressure: 0,
  ethylene: 0,
  wetness: 0,
  lit: false,
  uptake: 0,
});

/**
 * The air right around a lot in a stay, from the air of its box: inside a wrap its own vapour and ethylene pile up until as much
 * passes out as it gives off.
 *
 * @param conductance of the lot's surface to vapour [m³/s]
 * @param emission of the lot [µL/h]
 * @param density, ethylene of the box's air [kg/m³], [µL/L]
 */
export function airAround(
  stay: CompiledStay,
  conductance: number,
  emission: number,
  density: number,
  ethylene: number,
  out: MutableConditions,
): void {
  let around = density;
  let concentration = ethylene;
  if (stay.closed) {
    const settled =
      (stay.exchange * density + conductance * stay.surfaceDensity) / (stay.exchange + conductance);
    around = stay.wet || settled > stay.saturationDensity ? stay.saturationDensity : settled;
    concentration += emission / stay.litresPerHour;
  }
  const pressure = around * stay.pressurePerDensity;
  out.temperature = stay.temperature;
  out.vapourPressure = pressure;
  out.ethylene = concentration;
  out.wetness = wetnessOf(pressure / stay.saturationPressure);
  out.lit = stay.lit;
  out.uptake = stay.uptake;
}
