import { ripeningReferenceTemperature, ripeningTemperatureFactor } from "./temperatureFactor.js";

/**
 * Ripening a day [1/d] from mature-unripe (0) to ready to eat (1).
 *
 * Source: time to ripen straight in log ethylene, Wills et al. 2001; temperature: see `ripeningQ10`.
 *
 * @param power power to ripen at the temperature [1] (see `ripeningPower`)
 * @param celsius temperature [°C]
 * @param daysAt20 days to ripen at 20 °C in the reference ethylene
 * @param ethyleneFactor factor of ethylene on that time [1] (see `ethyleneActionFactor`), > 0
 */
export const ripeningRate = (
  power: number,
  celsius: number,
  daysAt20: number,
  ethyleneFactor: number,
): number =>
  (power * ripeningTemperatureFactor(celsius, ripeningReferenceTemperature)) / (daysAt20 * ethyleneFactor);

/**
 * Over-ripening a day [1/d] from ready to eat (1) to over-ripe (2), from the life of ripe fruit [d] at its temperature [°C]. A ripe fruit does not stop at the
 * ripening minimum; cold only slows it. Temperature: see `ripeningQ10`.
 */
export const overRipeningRate = (
  celsius: number,
  ripeLifeDays: number,
  ripeLifeTemperature: number,
): number => ripeningTemperatureFactor(celsius, ripeLifeTemperature) / ripeLifeDays;
