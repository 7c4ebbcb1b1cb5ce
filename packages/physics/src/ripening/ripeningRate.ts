/**
 * Ripening a day [1/d] from mature-unripe (0) to ready to eat (1).
 *
 * Source: time to ripen straight in log ethylene, Wills et al. 2001; temperature: see `ripeningTemperatureFactor`.
 *
 * @param temperatureFactor speed relative to 20 °C [1], ≥ 0
 * @param daysAt20 days to ripen at 20 °C in the reference ethylene
 * @param ethyleneFactor factor of ethylene on that time [1] (see `ethyleneActionFactor`), > 0
 */
export const ripeningRate = (temperatureFactor: number, daysAt20: number, ethyleneFactor: number): number =>
  temperatureFactor / (daysAt20 * ethyleneFactor);

/**
 * Over-ripening a day [1/d] from ready to eat (1) to over-ripe (2): with respiration, from the life of ripe fruit at its temperature.
 * Source of the scaling: as for senescence. A ripe fruit does not stop at the ripening minimum; cold only slows it.
 *
 * @param respirationRatio respiration over respiration at the temperature of the ripe life
 */
export const overRipeningRate = (respirationRatio: number, ripeLifeDays: number): number =>
  respirationRatio / ripeLifeDays;
