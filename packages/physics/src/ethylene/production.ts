import type { TemperatureTable } from "../produce/parts.js";
import { interpolateLogarithm } from "../respiration/interpolateLogarithm.js";
import { within } from "../within.js";

/**
 * Q10 of ethylene production where a kind's is given at one temperature only [1].
 *
 * Inferred: geometric mean over the three kinds with production given at both 0 and 20 °C, each from the geometric middles of its ranges: Red Delicious
 * apple 3.16 and 50 µL/(kg h) (Q10 3.98; UC Davis fact sheet, the 20 °C row from memory), ripe peach 5 and 31.6 (2.51), fresh fig 0.6 and 3.16 (2.29;
 * both Handbook 66 and Kader's classes, from memory).
 */
export const productionQ10 = 2.8;

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
