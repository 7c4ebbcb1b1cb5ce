import { catalogue } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { type Produce, produceFromCommodity, simulate } from "../../src/index.js";
import { whole } from "../fixtures/kinds.js";

const kinds = [...catalogue().commodities.values()].map(produceFromCommodity);

const stepKelvins = 0.5;
const warmest = 35;
/** The stepper's own error in a life [1]; the real fall over half a kelvin is a hundred times as large. */
const numericalSlack = 1e-4;

/** Days until any ending but water, in steady dry, dark air at the reference ethylene, and the day it is ripe. Small enough not to change that air. */
function lifeAt(produce: Produce, celsius: number, ripeness: number) {
  const stays = [
    { box: "room", temperature: celsius, wrap: "none", lit: false, until: "never" as const },
  ] as const;
  const unwilting = { ...produce, maximumLoss: Number.POSITIVE_INFINITY };
  const outcome = simulate({
    room: { temperature: celsius, relativeHumidity: 0.6, ethylene: 0.06 },
    boxes: [],
    lots: [{ produce: unwilting, kilograms: 1e-6, form: whole, ripeness, spent: 0, stays }],
    horizonDays: 1,
  }).lots[0]!;
  return { days: outcome.endDay, ripeDay: outcome.ripeDay };
}

/** The lowest temperature [°C] at which neither cold nor frost harms a fruit of a ripeness. */
function coldestSafe({ chilling, freezingPoint }: Produce, ripeness: number): number {
  const threshold = ripeness >= 1 ? chilling?.thresholdWhenRipe : chilling?.threshold;
  return Math.max(freezingPoint, threshold ?? freezingPoint);
}

function temperaturesFrom(coldest: number): number[] {
  const count = Math.floor((warmest - coldest) / stepKelvins) + 1;
  return Array.from({ length: count }, (_, step) => coldest + step * stepKelvins);
}

/** Temperatures [°C] half a kelvin below which it would live shorter. */
function livesLongerWarmer(produce: Produce, ripeness: number): number[] {
  const temperatures = temperaturesFrom(coldestSafe(produce, ripeness));
  const lives = temperatures.map((celsius) => lifeAt(produce, celsius, ripeness).days);
  return temperatures.filter((_, step) => step > 0 && lives[step]! > lives[step - 1]! * (1 + numericalSlack));
}

/**
 * Sprouting is not aging: stored bulbs wake soonest in middling warmth and sleep on in greater (published days to sprout in their records), so it is left
 * out where those days grow with warmth.
 */
function awake(produce: Produce): Produce {
  const { values } = produce.sprouting;
  const wakesSoonestInTheMiddle = values.some((days, entry) => entry > 0 && days > values[entry - 1]!);
  return wakesSoonestInTheMiddle ? { ...produce, sprouting: { temperatures: [], values: [] } } : produce;
}

describe("from the coldest safe temperature to 35 °C, no kind lives longer half a kelvin warmer", () => {
  test.each(kinds.filter(({ ripening }) => !ripening).map((produce) => [produce.id, produce] as const))(
    "%s",
    (_, produce) => expect(livesLongerWarmer(awake(produce), 1)).toEqual([]),
  );

  test.each(kinds.filter(({ ripening }) => ripening).map((produce) => [produce.id, produce] as const))(
    "%s, unripe, half ripe, nearly ripe, ripe and past it",
    (_, produce) => {
      for (const ripeness of [0, 0.5, 0.9, 1, 1.5])
        expect(livesLongerWarmer(produce, ripeness), `ripeness ${ripeness}`).toEqual([]);
    },
  );

  test("only stored bulbs are spared their sprouting", () => {
    const spared = kinds.filter((produce) => awake(produce) !== produce).map(({ id }) => id);
    expect(spared.sort()).toEqual(["garlic", "onion", "shallot"]);
  });
});

describe("fruit that ripens", () => {
  const ripening = kinds.filter((produce) => produce.ripening);

  test.each(ripening.map((produce) => [produce.id, produce] as const))(
    "%s stays unripe at its minimum and below, and above its maximum lives shorter than just below",
    (_, produce) => {
      const { minimum, maximum } = produce.ripening!;
      for (const celsius of [minimum - 2, minimum])
        expect(lifeAt(produce, celsius, 0).ripeDay).toBe(Number.POSITIVE_INFINITY);
      for (const ripeness of [0, 0.5, 0.9, 1]) {
        const below = lifeAt(produce, maximum - 2, ripeness).days;
        expect(lifeAt(produce, maximum + 1, ripeness).days).toBeLessThan(below);
      }
    },
  );
});
