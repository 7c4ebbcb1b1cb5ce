import { kelvinFromCelsius } from "@keepwright/quantities";

/**
 * Temperature [°C] of the triple point of water, below which saturation is taken over ice
 * (BIPM, The International System of Units, 9th ed., 2019: 273.16 K).
 */
export const triplePointCelsius = 0.01;

function logOverIce(kelvin: number): number {
  return (
    -5.6745359e3 / kelvin +
    6.3925247 +
    kelvin * (-9.677843e-3 + kelvin * (6.2215701e-7 + kelvin * (2.0747825e-9 + kelvin * -9.484024e-13))) +
    4.1635019 * Math.log(kelvin)
  );
}

function logOverWater(kelvin: number): number {
  return (
    -5.8002206e3 / kelvin +
    1.3914993 +
    kelvin * (-4.8640239e-2 + kelvin * (4.1764768e-5 + kelvin * -1.4452093e-8)) +
    6.5459673 * Math.log(kelvin)
  );
}

/**
 * Natural logarithm of the saturation pressure of water vapour [Pa] at a temperature [°C].
 *
 * Valid −100…200 °C; over ice below 0.01 °C, over liquid water from there on. Outside: RangeError.
 * Source: Hyland & Wexler 1983, as in ASHRAE Handbook Fundamentals (2017) ch. 1, eq. 5 and 6 (from memory; checked in
 * test/air against the psychrolib package, which transcribes the same equations, and against table values).
 */
export function logSaturationPressure(celsius: number): number {
  if (!(celsius >= -100 && celsius <= 200)) {
    throw new RangeError(
      `Saturation pressure is known from −100 to 200 °C, not at ${celsius} °C. Check the temperature and its unit.`,
    );
  }
  const kelvin = kelvinFromCelsius(celsius);
  return celsius < triplePointCelsius ? logOverIce(kelvin) : logOverWater(kelvin);
}

/**
 * Saturation pressure of water vapour [Pa] at a temperature [°C].
 *
 * Range, behaviour outside it and source: see `logSaturationPressure`.
 */
export const saturationPressure = (celsius: number): number => Math.exp(logSaturationPressure(celsius));
