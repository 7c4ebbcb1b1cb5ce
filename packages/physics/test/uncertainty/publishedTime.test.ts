import { catalogue, commodityOf } from "@keepwright/catalogue";
import { describe, expect, test } from "vitest";
import { produceFromCommodity, publishedTime } from "../../src/index.js";

const kind = (id: string) => produceFromCommodity(commodityOf(catalogue(), id));
const whole = { cut: false };
const middle = (low: number, high: number): number => Math.sqrt(low * high);

describe("the published time a life was worked out from", () => {
  test("is that of what ends it, at the temperature published nearest", () => {
    const [banana, potato] = [kind("banana"), kind("potato")];
    const cold = commodityOf(catalogue(), "banana").chilling!.injury.find(
      ({ temperature }) => temperature === 5,
    )!;
    expect(publishedTime(banana, whole, "chilling", 4)).toBeCloseTo(middle(cold.low, cold.high), 9);
    expect(publishedTime(potato, whole, "safety", 20)).toBe(potato.greensInLightDays);
    const sprouts = commodityOf(catalogue(), "potato").sprouting;
    const warm = sprouts.find(({ temperature }) => temperature === 15)!;
    expect(publishedTime(potato, whole, "sprouting", 16)).toBeCloseTo(middle(warm.low, warm.high), 9);
  });

  test("is the time to ripen and stay ripe where it gets over-ripe, as ripe as it usually comes", () => {
    const { ripening, ...banana } = kind("banana");
    const expected = ripening!.daysAt20 * (1 - ripening!.arrives) + ripening!.ripeLifeDays;
    expect(publishedTime({ ...banana, ripening: ripening! }, whole, "over-ripeness", 20)).toBeCloseTo(
      expected,
      9,
    );
  });

  test("is the storage life for all else, and the cut life once cut", () => {
    const onion = kind("onion");
    for (const ending of ["senescence", "water", "decay", "chilling"] as const)
      expect(publishedTime(onion, whole, ending, 20)).toBe(onion.storageLifeDays);
    expect(publishedTime(onion, { cut: true }, "safety", 20)).toBe(onion.cutLifeDaysAt5);
  });
});
