/** Molar mass of water over that of dry air [1]. Source: ASHRAE Handbook Fundamentals (2017) ch. 1, eq. 20 (0.621945; from memory). */
export const waterToDryAirMolarMass = 0.621945;

/** Standard pressure of the atmosphere at sea level [Pa]: 101 325, exact by definition (ISO 2533). */
export const standardPressure = 101_325;

/**
 * Humidity ratio [kg water per kg dry air] from vapour pressure and total pressure [Pa], as ideal gases.
 *
 * Needs 0 ≤ vapour pressure < total pressure; otherwise RangeError.
 * Source: ASHRAE Handbook Fundamentals (2017) ch. 1, eq. 20.
 */
export function humidityRatioFromVapourPressure(
  vapourPressure: number,
  totalPressure: number = standardPressure,
): number {
  if (!(vapourPressure >= 0 && vapourPressure < totalPressure)) {
    throw new RangeError(
      `A vapour pressure of ${vapourPressure} Pa is not between 0 and the total pressure of ${totalPressure} Pa. Check both units.`,
    );
  }
  return (waterToDryAirMolarMass * vapourPressure) / (totalPressure - vapourPressure);
}

/** Vapour pressure [Pa] from humidity ratio [kg/kg] and total pressure [Pa]. Inverse of `humidityRatioFromVapourPressure`; humidity ratio ≥ 0. */
export const vapourPressureFromHumidityRatio = (
  humidityRatio: number,
  totalPressure: number = standardPressure,
): number => (totalPressure * humidityRatio) / (waterToDryAirMolarMass + humidityRatio);
