import type { TemperatureTable } from "../produce/parts.js";
import { interpolateLogarithm } from "../respiration/interpolateLogarithm.js";
import { within } from "../within.js";

/**
 * Q10 of ethylene production where a kind's is given at one temperature only [1].
 *
 * Inferred: geometric mean over the kinds kept cold with production given far apart, each from the geometric middles of its ranges: Red Delicious apple 3.16
 * at 0 and 50 µL/(kg h) at 20 °C (Q10 4.0; UC Davis fact sheet, the 20 °C row from memory), tomato 1.34 at 10 and 4.6 at 20 °C (3.4; UC Davis fact sheet, the
 * 20 °C row from memory), ripe peach 5 at 0 and 31.6 at 20 °C (2.5) and fresh fig 0.6 at 0 and 3.16 at 20 °C (2.3; both Handbook 66 and Kader's classes, from
 * memory): 2.98. Banana and mango between 10 and 20 °C, where cold also stops ripening, are steeper (7 and 9).
 */
export const productionQ10 = 3;

/**
 * Ethylene production [µL/(kg h)] at a temperature [°C]: straight in the logarithm between given temperatures; outside them, and where only one is
 * given, carried on at `productionQ10`. Fitted to 0…20 °C; above about 30 °C real production falls, which is left out.
 */
export const ethyleneProduction = (table: TemperatureTable, celsius: number): number =>
  interpolateLogarithm(table, celsius, { outside: productionQ10 });

/**
 * How many times more ethylene cut pieces give off [1]. From memory: three- to fivefold for sliced tomato and strawberry, sixteenfold for kiwifruit
 * (Watada, Abe & Yamuchi 1990, Food Technology 44:116–122).
 */
export const woundEthyleneFactor = 4;

/**
 * Ethylene production [µL/(kg h)] at a ripeness: straight in the logarithm from the unripe to the ripe rate between 0 and 1, the ripe rate beyond.
 * Source: rise by orders of magnitude over the climacteric (Kader 2002); the straight line in the logarithm is inferred.
 *
 * @param logUnripe natural logarithm of the unripe rate, @param logRipe of the ripe rate
 */
export const productionAtRipeness = (logUnripe: number, logRipe: number, ripeness: number): number =>
  Math.exp(logUnripe + (logRipe - logUnripe) * within(ripeness, 0, 1));
