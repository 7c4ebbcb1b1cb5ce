import { overRipeningRate, ripeningRate } from "./ripeningRate.js";
import { onsetKelvins, ripeningTemperatureFactor } from "./temperatureFactor.js";

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
 * Days from mature-unripe through ready to eat to over-ripe, at a temperature [°C] and in the reference ethylene, if it had its whole power to ripen there.
 */
export const lifeThroughRipening = (celsius: number, { ripening }: UnripeFruit): number =>
  1 / ripeningRate(1, celsius, ripening.daysAt20, 1) +
  1 / overRipeningRate(celsius, ripening.ripeLifeDays, ripening.ripeLifeTemperature);

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
  if (celsius <= storageTemperature) return stored / ripeningTemperatureFactor(celsius, storageTemperature);
  return stored * (there / stored) ** ((celsius - storageTemperature) / (whole - storageTemperature));
}
