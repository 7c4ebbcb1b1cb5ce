import { kelvinFromCelsius } from "@keepwright/quantities";

/**
 * Gas constant of water vapour [J/(kg K)]: 8.314 462 618 J/(mol K) (BIPM, SI, 2019) over 0.018 015 268 kg/mol (ASHRAE Handbook
 * Fundamentals ch. 1; from memory) is 461.52; the rounded 461.5 is within 0.01 %.
 */
export const waterVapourGasConstant = 461.5;

/** Density of water vapour [kg/m³] from its pressure [Pa] and temperature [°C], as an ideal gas: within 0.3 % in kitchen air. */
export const vapourDensityFromPressure = (vapourPressure: number, celsius: number): number =>
  vapourPressure / (waterVapourGasConstant * kelvinFromCelsius(celsius));

/** Pressure of water vapour [Pa] from its density [kg/m³] and temperature [°C], as an ideal gas. Inverse of `vapourDensityFromPressure`. */
export const vapourPressureFromDensity = (density: number, celsius: number): number =>
  density * waterVapourGasConstant * kelvinFromCelsius(celsius);
