import { logSaturationPressure, saturationPressure } from "./saturationPressure.js";

const coldest = -100;
const warmest = 200;
/** Bisection halves 300 K this often: below 1e-12 K. */
const halvings = 50;

/**
 * Dew point (frost point below 0.01 °C) [°C] from vapour pressure [Pa]: the temperature at which it saturates.
 *
 * Valid for pressures between saturation at −100 and at 200 °C; outside: RangeError. Found by bisection on the logarithm, which needs
 * no derivative and cannot leave its range; good to 1e-9 K. Source: inverse of Hyland & Wexler 1983 (see `saturationPressure`).
 */
export function dewPoint(vapourPressure: number): number {
  if (!(vapourPressure >= saturationPressure(coldest) && vapourPressure <= saturationPressure(warmest))) {
    throw new RangeError(
      `A vapour pressure of ${vapourPressure} Pa has no dew point between ${coldest} and ${warmest} °C. Check its unit: pascal.`,
    );
  }
  const sought = Math.log(vapourPressure);
  let low = coldest;
  let high = warmest;
  for (let halving = 0; halving < halvings; halving++) {
    const middle = (low + high) / 2;
    if (logSaturationPressure(middle) < sought) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
