import { spanWords, speaker } from "@keepwright/handout";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

const words = (early: number, late: number) => spanWords(speaker(), early, late);

describe("a span of days in words", () => {
  it.each([
    [0.1, 0.5, "less than a day"],
    [0.4, 1.2, "up to 1 day"],
    [0.4, 2.4, "up to 2 days"],
    [1.1, 1.4, "about a day"],
    [4.1, 4.4, "about 4 days"],
    [8.9, 12.4, "8 to 12 days"],
    [9, 20, "9 to 20 days"],
    [1.5, 25, "a day to 4 weeks"],
    [9, 30, "9 days to 4 weeks"],
    [20, 29, "2 to 4 weeks"],
    [29, 31, "about 4 weeks"],
    [10, 90, "10 days to 3 months"],
    [16, 80, "2 weeks to 3 months"],
    [65, 150, "2 to 5 months"],
    [92, 100, "about 3 months"],
    [40, 500, "a month to more than a year"],
    [200, 500, "6 months to more than a year"],
    [20, 500, "2 weeks to 12 months"],
    [400, 500, "more than a year"],
  ])("%f to %f days is “%s”", (early, late, expected) => {
    expect(words(early, late)).toBe(expected);
  });

  it("never leaves a hole, a fraction or a zero, whatever the figures", () => {
    const figure = fc.double({ min: 0, max: 2000, noNaN: true });
    fc.assert(
      fc.property(figure, figure, (one, other) => {
        const text = words(Math.min(one, other), Math.max(one, other));
        expect(text).not.toMatch(/[{}.]|NaN|\b0\b|undefined/);
      }),
    );
  });

  it("never puts the earlier end of a range after the later one", () => {
    const lengths: Record<string, number> = { day: 1, week: 7, month: 30.4 };
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 365, noNaN: true }),
        fc.double({ min: 1, max: 3, noNaN: true }),
        (early, ratio) => {
          const match = /^(\d+)(?: (day|week|month)s?)? to (\d+) (day|week|month)s?$/.exec(
            words(early, Math.min(365, early * ratio)),
          );
          if (!match) return;
          const [, low, lowUnit, high, highUnit] = match;
          const start = Number(low) * (lengths[lowUnit ?? highUnit ?? "day"] ?? 1);
          expect(start).toBeLessThan(Number(high) * (lengths[highUnit ?? "day"] ?? 1) + 1);
        },
      ),
    );
  });
});
