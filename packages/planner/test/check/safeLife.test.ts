import { catalogue } from "@keepwright/catalogue";
import { safetyLimitsFrom } from "@keepwright/physics";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Place } from "../../src/problem/kitchen.js";
import { ordinaryKitchens } from "../../src/problem/ordinaryKitchens.js";
import { planHaul } from "../../src/search/planHaul.js";
import { from, lot, request } from "../support.js";

const limits = safetyLimitsFrom(catalogue().safety);
const underControl = [...catalogue().commodities.values()]
  .filter(({ cut }) => cut.timeTemperatureControl.value)
  .map(({ id }) => id)
  .sort();

const planned = (kind: string, extraDays: number, days = 9) =>
  planHaul(request([lot(kind, 400, { form: "cut", extraDays })], undefined, { days })).lots;

const warmer = (place: Place): Place =>
  place.refrigerator === undefined ? place : { ...place, temperature: 8 };

describe("the life told of cut produce under time and temperature control", () => {
  it("is one of kinds there are", () => expect(underControl.length).toBeGreaterThan(3));

  it.each(underControl)("is never longer than the safe days left: %s", (kind) => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), (extraDays) => {
        const left = limits.readyToEatDays - 1 - extraDays;
        for (const { life, safeUntil, eatOn } of planned(kind, extraDays)) {
          expect(life.late).toBeLessThanOrEqual(Math.max(0, left) + 1e-9);
          expect(life.early).toBeLessThanOrEqual(life.middle);
          expect(life.middle).toBeLessThanOrEqual(life.late);
          expect(safeUntil === "past").toBe(left < 0);
          if (left < 0) expect(eatOn).toEqual([]);
        }
      }),
      { numRuns: 4 },
    );
  });

  it("names the last safe day, the day it was cut counted as the first of seven", () => {
    expect(planned("cantaloupe", 0)[0]!.safeUntil).toBe("2026-06-19");
    expect(from).toBe("2026-06-13");
    expect(planned("cantaloupe", 6)[0]!.safeUntil).toBe(from);
  });

  describe("days since it was cut count as spent in the best place the kitchen has", () => {
    const cutIn = (kitchen: unknown, kind: string, extraDays: number) =>
      planHaul(request([lot(kind, 400, { form: "cut", extraDays })], kitchen)).lots[0]!;
    const places = ordinaryKitchens.ordinary.places;
    const noRefrigerator = {
      ...ordinaryKitchens.ordinary,
      refrigerators: [],
      places: places.filter(({ refrigerator }) => refrigerator === undefined),
    };
    const warm = { ...ordinaryKitchens.ordinary, places: places.map(warmer) };

    it.each(["cantaloupe", "pineapple", "head-lettuce"])(
      "without a refrigerator none is left: %s",
      (kind) => {
        expect(cutIn(noRefrigerator, kind, 0).safeUntil).toBe(from);
        const old = cutIn(noRefrigerator, kind, 1);
        expect(old.safeUntil).toBe("past");
        expect(old.eatOn).toEqual([]);
      },
    );
    it("nor where the refrigerator is too warm for its kind", () => {
      expect(cutIn(warm, "cantaloupe", 0).safeUntil).toBe(from);
      expect(cutIn(warm, "cantaloupe", 1).safeUntil).toBe("past");
    });
  });

  it("has no limit of its own for whole produce", () => {
    const [whole] = planHaul(request([lot("cantaloupe", 900)])).lots;
    expect(whole).not.toHaveProperty("safeUntil");
    expect(whole).not.toHaveProperty("lifeBeforeSafety");
  });

  it("puts what is past its safe time before all other cautions", () => {
    const plan = planHaul(request([lot("watermelon", 3000, { form: "cut", extraDays: 8 })]));
    expect(plan.cautions[0]).toBe("safe-time-past");
    expect(plan.lots[0]!.life.late).toBe(0);
  });
});
