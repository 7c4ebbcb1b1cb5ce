import { saturationPressure } from "./saturationPressure.js";

/**
 * Vapour pressure deficit [Pa] of air at a temperature [°C] and relative humidity [0…1]: how far it is from saturation. Negative in
 * supersaturated air. −100…200 °C. Source: definition.
 */
export const vapourPressureDeficit = (celsius: number, relativeHumidity: number): number =>
  saturationPressure(celsius) * (1 - relativeHumidity);
