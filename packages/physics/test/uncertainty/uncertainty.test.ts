import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  carriedFrom,
  chancePastBest,
  chancePastBestGiven,
  lifeRange,
  lifeSpread,
  lifeTemperatureSlope,
  publicationSpread,
} from "../../src/index.js";

const life = { median: 10, spread: 0.3 };
const day = () => fc.double({ min: 0, max: 60, noNaN: true });

describe("a life as a distribution", () => {
  test("early and late are the days of 10 % and 90 %", () => {
    const { early, middle, late } = lifeRange(life);
    expect(chancePastBest(life, early)).toBeCloseTo(0.1, 6);
    expect(chancePastBest(life, middle)).toBeCloseTo(0.5, 6);
    expect(chancePastBest(life, late)).toBeCloseTo(0.9, 6);
  });
  test("gives back the published range it was made from", () => {
    const spread = Math.log(14 / 10) / (2 * 1.2815515655446004);
    const { early, late } = lifeRange({ median: Math.sqrt(140), spread });
    expect([early, late].map((days) => Number(days.toFixed(9)))).toEqual([10, 14]);
  });
  test("the chance never falls with time", () => {
    fc.assert(
      fc.property(
        day(),
        day(),
        (one, other) =>
          chancePastBest(life, Math.min(one, other)) <= chancePastBest(life, Math.max(one, other)),
      ),
    );
  });
  test("without spread it is a step", () => {
    expect([9.9, 10].map((on) => chancePastBest({ median: 10, spread: 0 }, on))).toEqual([0, 1]);
  });
  test("what never ends is never past, what ended on arrival always", () => {
    expect(chancePastBest({ median: Number.POSITIVE_INFINITY, spread: 0.3 }, 50)).toBe(0);
    expect(chancePastBest({ median: 0, spread: 0.3 }, 0)).toBe(1);
  });
});

describe("a lot seen to be good", () => {
  test("is judged among those still good that day", () => {
    const given = chancePastBestGiven(life, 12, 9);
    const gone = chancePastBest(life, 9);
    expect(gone + (1 - gone) * given).toBeCloseTo(chancePastBest(life, 12), 12);
  });
  test("is less likely past than one not looked at", () => {
    fc.assert(
      fc.property(
        day(),
        day(),
        (on, seen) => chancePastBestGiven(life, on, seen) <= chancePastBest(life, on) + 1e-9,
      ),
    );
  });
  test("is not past on the day it was seen", () => expect(chancePastBestGiven(life, 9, 9)).toBe(0));
});

describe("spread", () => {
  const causes = {
    biology: 0.2,
    temperatureSpread: 1,
    temperatureSlope: -0.12,
    spent: 0.2,
    spentSpread: 0.1,
    carried: Math.LN2,
  };
  test("adds the variances of independent causes", () => {
    const { betweenReports, perCarried } = publicationSpread;
    expect(lifeSpread(causes)).toBeCloseTo(
      Math.hypot(0.2, 0.12, 0.125, betweenReports, perCarried * Math.LN2),
      12,
    );
  });
  test("grows the further the model carries a life from the published one, either way alike", () => {
    const at = (life: number) => lifeSpread({ ...causes, carried: carriedFrom(life, 12) });
    expect(at(3)).toBeGreaterThan(at(6));
    expect(at(24)).toBeCloseTo(at(6), 12);
    expect(at(12)).toBeCloseTo(at(Number.POSITIVE_INFINITY), 12);
  });
  test("is never less than any one cause", () => {
    expect(lifeSpread(causes)).toBeGreaterThan(0.2);
    expect(lifeSpread({ ...causes, spent: 0.99 })).toBeLessThan(Number.POSITIVE_INFINITY);
  });
  test("slope of a life that halves over 5 K", () =>
    expect(lifeTemperatureSlope(20, 0, 10, 5)).toBeCloseTo(-Math.LN2 / 5, 12));
});
