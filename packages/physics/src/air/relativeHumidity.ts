import { saturationPressure } from "./saturationPressure.js";

/** Relative humidity [0…1] from vapour pressure [Pa] and temperature [°C]; above 1 where the air is supersaturated. −100…200 °C. */
export const relativeHumidityFromVapourPressure = (vapourPressure: number, celsius: number): number =>
  vapourPressure / saturationPressure(celsius);

/** Vapour pressure [Pa] from relative humidity [0…1] and temperature [°C]. Over ice below 0.01 °C. −100…200 °C. */
export const vapourPressureFromRelativeHumidity = (relativeHumidity: number, celsius: number): number =>
  relativeHumidity * saturationPressure(celsius);
