import { kelvinFromCelsius } from "@keepwright/quantities";
import { saturationPressure } from "../air/saturationPressure.js";

/**
 * Gas constant of water vapour [J/(kg K)]: the molar gas constant 8.314462618 J/(mol K) (exact by definition of the SI, 2019) over
 * the molar mass of water 0.018015268 kg/mol (CODATA/IAPWS; from memory).
 */
export const vapourGasConstant = 8.314462618 / 0.018015268;

/** Seconds in an hour times litres in a cubic metre: turns L/h into m³/s when divided by. Exact. */
export const litresPerHourInCubicMetrePerSecond = 3_600_000;

/** Pressure per density of water vapour at a temperature [Pa m³/kg]; vapour is taken as an ideal gas (within 0.2 % below 50 °C). */
export const pressurePerDensity = (celsius: number): number => vapourGasConstant * kelvinFromCelsius(celsius);

/** Density of saturated water vapour [kg/m³]. Range: see `saturationPressure`. */
export const saturationDensity = (celsius: number): number =>
  saturationPressure(celsius) / pressurePerDensity(celsius);
