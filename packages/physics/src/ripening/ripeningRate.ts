import { ripeningQ10, ripeningTemperatureFactor } from "./temperatureFactor.js";

/**
 * Ripening a day [1/d] from mature-unripe (0) to ready to eat (1).
 *
 * Source: time to ripen straight in log ethylene, Wills et al. 2001; temperature: see `unripeQ10`.
 *
 * @param temperatureFactor speed relative to 20 °C [1], power to ripen included, ≥ 0
 * @param daysAt20 days to ripen at 20 °C in the reference ethylene
 * @param ethyleneFactor factor of ethylene on that time [1] (see `ethyleneActionFactor`), > 0
 */
export const ripeningRate = (temperatureFactor: number, daysAt20: number, ethyleneFactor: number): number =>
  temperatureFactor / (daysAt20 * ethyleneFactor);

/**
 * Over-ripening a day [1/d] from ready to eat (1) to over-ripe (2), from the life of ripe fruit [d] at its temperature [°C]. A ripe fruit does not stop at the
 * ripening minimum; cold only slows it. Temperature: see `ripeningQ10`.
 */
export const overRipeningRate = (
  celsius: number,
  ripeLifeDays: number,
  ripeLifeTemperature: number,
): number => ripeningTemperatureFactor(celsius, ripeLifeTemperature, ripeningQ10) / ripeLifeDays;
