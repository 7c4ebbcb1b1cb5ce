import type { Celsius, Fahrenheit } from "./brand.js";

/** Kelvin at 0 °C, exact by definition of the Celsius scale (BIPM, The International System of Units, 9th ed., 2019, §2.3.1). */
export const kelvinAtZeroCelsius = 273.15;

/** Absolute temperature [K] from temperature [°C]. Any finite value. */
export const kelvinFromCelsius = (celsius: Celsius): number => celsius + kelvinAtZeroCelsius;

/** Temperature [°C] from temperature [°F]. Any finite value. Exact by definition of the scales. */
export const celsiusFromFahrenheit = (fahrenheit: Fahrenheit): Celsius => ((fahrenheit - 32) * 5) / 9;

/** Temperature [°F] from temperature [°C]. Any finite value. */
export const fahrenheitFromCelsius = (celsius: Celsius): Fahrenheit => (celsius * 9) / 5 + 32;
