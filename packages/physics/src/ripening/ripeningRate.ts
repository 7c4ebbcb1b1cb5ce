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
 * Q10 of over-ripening [1]: the general rule of thumb for living tissue (van 't Hoff), chosen because the published pairs scatter about it.
 *
 * Inferred, not fitted to one of them: ripe mango a week at 10–13 °C (read) and two to three days at 20 °C (from memory), about 3; ripe avocado up to a week in a refrigerator
 * and one or two days at 20 °C (secondary page; from memory), about 2.4; firm-ripe tomato 3–5 days at 7–10 °C (UC Davis, mirror) and 2–4 days red (NC State
 * Extension), about 1.3; banana, holding temperature of little influence from 15 to 27 °C (Rippon & Trochoulias 1976, abstract), about 1. Respiration tables rise
 * two to four times in 10 K there because they set unripe fruit in the cold beside ripe fruit in the warmth.
 */
export const overRipeningQ10 = 2;

/**
 * Over-ripening a day [1/d] from ready to eat (1) to over-ripe (2), from the life of ripe fruit [d] at its temperature [°C]. A ripe fruit does not stop at the
 * ripening minimum; cold only slows it.
 */
export const overRipeningRate = (
  celsius: number,
  ripeLifeDays: number,
  ripeLifeTemperature: number,
): number => overRipeningQ10 ** ((celsius - ripeLifeTemperature) / 10) / ripeLifeDays;
