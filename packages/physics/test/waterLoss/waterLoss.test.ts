import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cutSurfaceTranspiration,
  percentPerDay,
  seriesConductance,
  transpirationFromPercentPerDayMillibar,
  transpirationRate,
  transpirationWhenCut,
} from "../../src/index.js";

const pressure = () => fc.double({ min: 0, max: 5000, noNaN: true });

describe("transpiration", () => {
  test("drier air never loses less", () => {
    fc.assert(
      fc.property(pressure(), pressure(), pressure(), (surface, one, other) => {
        const [dry, damp] = one < other ? [one, other] : [other, one];
        return transpirationRate(1e-9, surface, dry) >= transpirationRate(1e-9, surface, damp);
      }),
    );
  });

  test("damp air gives no water back", () => expect(transpirationRate(1e-9, 800, 900)).toBe(0));

  test("a stem in water replaces its share", () => {
    expect(transpirationRate(1e-9, 900, 400, 0.8)).toBeCloseTo(0.2 * transpirationRate(1e-9, 900, 400), 20);
  });

  test("1 % a day and millibar is 1157 ng/(kg s Pa)", () => {
    expect(transpirationFromPercentPerDayMillibar(1)).toBeCloseTo(1.1574e-9, 13);
    expect(percentPerDay(transpirationFromPercentPerDayMillibar(2.5), 100)).toBeCloseTo(2.5, 12);
  });
});

describe("conductances in series", () => {
  test("are less than the least of them, and resistances add", () => {
    expect(seriesConductance(2, 2)).toBeCloseTo(1, 12);
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), { minLength: 1 }),
        (all) => seriesConductance(...all) <= Math.min(...all) * (1 + 1e-12),
      ),
    );
  });
  test("one that lets nothing through stops all", () => expect(seriesConductance(3, 0)).toBe(0));
  test("none resist nothing", () => expect(seriesConductance()).toBe(Number.POSITIVE_INFINITY));
});

test("cutting never saves water", () => {
  expect(transpirationWhenCut(1e-10)).toBe(cutSurfaceTranspiration);
  expect(transpirationWhenCut(7e-9)).toBe(7e-9);
});
