import type { Produce } from "../../src/produce/produce.js";

/**
 * Invented kinds for testing the numerical method, each with processes of another sort. Their figures are of a usual size and stand for
 * no real produce: what real kinds do is tested elsewhere, with sources.
 */
const table = (...pairs: [number, number][]) => ({
  temperatures: pairs.map(([temperature]) => temperature),
  values: pairs.map(([, value]) => value),
});

const plain: Produce = {
  id: "plain",
  respiration: table([0, 10], [5, 22], [10, 45], [20, 110]),
  storageTemperature: 0,
  storageLifeDays: 20,
  lifeSpread: 0.2,
  freezingPoint: -0.5,
  ethyleneUnripe: table([0, 0.05], [20, 0.2]),
  ethyleneRipe: table([0, 0.05], [20, 0.2]),
  ethyleneSlope: 0.2,
  ethyleneInjuries: [],
  transpiration: 2e-9,
  transpirationWithTops: 2e-9,
  maximumLoss: 0.07,
  decayFactor: 0.5,
  soft: false,
  sprouting: { temperatures: [], values: [] },
  eatingEffects: [],
  cutLifeDaysAt5: 5,
  timeTemperatureControl: false,
};

const fruit: Produce = {
  ...plain,
  id: "fruit",
  respiration: table([0, 4], [10, 12], [20, 40]),
  // Of a usual size with the days below: ripening four times as slow at 0 as at 20 °C (`unripeQ10` 2).
  storageLifeDays: 52,
  ethyleneUnripe: table([0, 0.2], [20, 2]),
  ethyleneRipe: table([0, 5], [20, 60]),
  transpiration: 4e-11,
  ripening: {
    daysAt20: 5,
    minimum: 2,
    maximum: 30,
    ripeLifeDays: 8,
    ripeLifeTemperature: 20,
    ethyleneSlope: 0.15,
    arrives: 0.6,
  },
};

export const kinds = {
  /** Leaves: lose water fast, age in ethylene. */
  leaf: { ...plain, id: "leaf", transpiration: 7e-9, storageLifeDays: 14, ethyleneSlope: 0.25 },
  /** Stands well, hurt by ethylene above an onset. */
  root: {
    ...plain,
    id: "root",
    storageLifeDays: 120,
    transpiration: 2e-10,
    ethyleneInjuries: [{ effect: "bitterness", concentration: 0.5, days: 14, temperature: 5, onlyAbove: -5 }],
  },
  /** Ripens and gives off much ethylene. */
  fruit,
  /** Ripens, and is hurt by cold. */
  tender: {
    ...fruit,
    id: "tender",
    ethyleneRipe: table([0, 0.5], [20, 20]),
    chilling: { threshold: 12, thresholdWhenRipe: 8, injury: table([2, 6], [8, 14]) },
  },
  /** Rots first. */
  berry: { ...plain, id: "berry", storageLifeDays: 10, decayFactor: 2, soft: true, transpiration: 1e-9 },
  /** Chills, does not ripen. */
  pod: {
    ...plain,
    id: "pod",
    storageTemperature: 8,
    storageLifeDays: 10,
    chilling: { threshold: 7, thresholdWhenRipe: 7, injury: table([0, 5], [5, 10]) },
  },
  /** Sprouts in the warm. */
  bulb: {
    ...plain,
    id: "bulb",
    storageLifeDays: 200,
    transpiration: 6e-11,
    sprouting: table([5, 90], [20, 25]),
  },
} satisfies Record<string, Produce>;
export type Kind = keyof typeof kinds;
