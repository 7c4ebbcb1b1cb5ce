import { overRipeningRate } from "./ripeningRate.js";
import {
  onsetKelvins,
  ripeningPower,
  ripeningQ10,
  ripeningReferenceTemperature,
  ripeningTemperatureFactor,
} from "./temperatureFactor.js";

/** What the life of unripe fruit is worked out from: its storage life [d] at a temperature [°C], and how it ripens. */
export interface UnripeFruit {
  readonly storageTemperature: number;
  readonly storageLifeDays: number;
  readonly ripening: {
    readonly daysAt20: number;
    readonly minimum: number;
    readonly ripeLifeDays: number;
    readonly ripeLifeTemperature: number;
  };
}

/**
 * Kelvins a storage life must have been told below 20 °C for a kind's own Q10 to be taken from it. Inferred: published ranges have ends a factor of 1.5 apart in the
 * median, which over 15 K leaves a Q10 uncertain by a factor of 1.3, over 7 K by 1.8; the kinds themselves differ by a factor of two to three.
 */
export const farFromRipening = 15;

/** Life of ripe fruit [d] at a temperature [°C]. */
const ripeLife = (celsius: number, { ripening }: UnripeFruit): number =>
  1 / overRipeningRate(celsius, ripening.ripeLifeDays, ripening.ripeLifeTemperature);

/**
 * Q10 of a kind's ripening [1]: the one with which the time to ripen and the ripe life at the storage temperature add up to the published storage life, where that was told far enough from 20 °C; else
 * `ripeningQ10`. At least 1. That storing and ripening are one process at different speeds is inferred; pears and kiwifruit, which keep for months, so get the
 * steep ones that keep them unripe in the cold.
 */
export function unripeQ10(fruit: UnripeFruit): number {
  const { storageTemperature, storageLifeDays, ripening } = fruit;
  const kelvins = ripeningReferenceTemperature - storageTemperature;
  if (kelvins < farFromRipening) return ripeningQ10;
  const slowed = (storageLifeDays - ripeLife(storageTemperature, fruit)) / ripening.daysAt20;
  return Math.max(1, slowed) ** (10 / kelvins);
}

/**
 * How many times as fast as at 20 °C unripe fruit ages at a temperature [1; °C]: by its own Q10 up to 20 °C, which is as far as the two lives it comes from reach, by `ripeningQ10` above.
 */
const agingSpeed = (celsius: number, fruit: UnripeFruit): number =>
  ripeningTemperatureFactor(
    celsius,
    ripeningReferenceTemperature,
    celsius < ripeningReferenceTemperature ? unripeQ10(fruit) : ripeningQ10,
  );

/** Speed of ripening relative to 20 °C [1] at a temperature [°C], power to ripen included. */
export const ripeningSpeed = (celsius: number, fruit: UnripeFruit): number =>
  ripeningPower(celsius, fruit.ripening.minimum) * agingSpeed(celsius, fruit);

/**
 * Days from mature-unripe through ready to eat to over-ripe, at a temperature [°C] and in the reference ethylene, if it had its whole power to ripen there.
 */
export const lifeThroughRipening = (celsius: number, fruit: UnripeFruit): number =>
  fruit.ripening.daysAt20 / agingSpeed(celsius, fruit) + ripeLife(celsius, fruit);

/**
 * Life of mature-unripe fruit that stays unripe [d] at a temperature [°C], in the reference ethylene: until it has lost the power to ripen. Never longer in the warmer of two temperatures.
 *
 * It passes through the published storage life, and meets the life through ripening where the power to ripen is whole (3 K above the minimum): straight in the logarithm between the two, beyond
 * them with the Q10 of ripening. Where the storage life is the shorter of the two, though told of a colder place, the longer counts at both: storage lives are ranges, and fruit keeps in the cold at
 * least as long as it takes to ripen and go over. A storage life told of a place warm enough to ripen in says nothing of fruit that stays unripe: the life through ripening is then
 * carried on into the cold. Inferred as a whole, from two published lives and no constant of its own.
 */
export function unripeLife(celsius: number, fruit: UnripeFruit): number {
  const { storageTemperature, storageLifeDays, ripening } = fruit;
  const whole = ripening.minimum + onsetKelvins;
  if (celsius >= whole || storageTemperature >= whole) return lifeThroughRipening(celsius, fruit);
  const there = lifeThroughRipening(whole, fruit);
  const stored = Math.max(storageLifeDays, there);
  if (celsius <= storageTemperature)
    return stored * ripeningTemperatureFactor(storageTemperature, celsius, unripeQ10(fruit));
  return stored * (there / stored) ** ((celsius - storageTemperature) / (whole - storageTemperature));
}
