import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { type BuyingRequest, buyable } from "../../src/buying/index.js";
import { type WorthBuying, worthBuyingSchema } from "../../src/buying/worthBuying.js";
import { checkPlan } from "../../src/check/index.js";
import { HaulError, HouseholdError, KitchenError } from "../../src/problem/inputError.js";
import { planHaul } from "../../src/search/planHaul.js";
import { randomRequest } from "../cases/randomRequest.js";
import { lot, request, smallKitchen, withPlace } from "../support.js";

function asked(...given: Parameters<typeof request>): BuyingRequest {
  const { haul, ...rest } = request(...given);
  return { ...rest, wished: haul };
}
const thing = ({ things }: WorthBuying, id: string) => things.find((one) => one.id === id)!;

/** Eaten less wasted [g]: what the amounts are chosen by. */
const worth = ({ eaten, wasted }: WorthBuying["ifAll"]): number => eaten.value - wasted.value;

/** What is bought, as a haul to plan for. */
function boughtHaul(wished: { lots: { id: string }[] }, { things }: WorthBuying) {
  const lots = wished.lots.flatMap((one) => {
    const { buy } = things.find(({ id }) => id === one.id)!;
    return buy.grams > 0 ? [{ ...one, ...buy }] : [];
  });
  return { lots };
}

/** Invented: far more greens and berries than one person eats in a week, and a sack of potatoes. */
const lots = [
  lot("spinach", 900),
  lot("raspberry", 800),
  lot("romaine", 1800, { pieces: 3 }),
  lot("carrot", 400),
  lot("potato", 6000),
];
const list = asked(lots, undefined, { people: 1, days: 6 });

describe("more than one person eats in six days", () => {
  let told: WorthBuying;
  beforeAll(() => {
    told = buyable(list);
  }, 120_000);

  it("is told in the published shape, and the same again", () => {
    expect(worthBuyingSchema.parse(told)).toEqual(told);
    expect(buyable(list)).toEqual(told);
  }, 120_000);

  it("is cut, never raised, in whole units", () => {
    for (const { wished, buy, unit, cutBecause } of told.things) {
      expect(buy.grams).toBeLessThanOrEqual(wished.grams);
      if (buy.grams < wished.grams) expect(cutBecause).toBeDefined();
      else expect(cutBecause).toBeUndefined();
      const units = buy.grams / unit.grams;
      if (buy.grams < wished.grams) expect(units).toBeCloseTo(Math.round(units), 6);
    }
  });

  it("leaves potatoes that would only be left over, as too much for the table", () => {
    expect(thing(told, "potato").cutBecause).toBe("too much for the table");
    expect(thing(told, "potato").buy.grams).toBeLessThan(3000);
  });

  it("wastes less, surely, and what is eaten is told beside it", () => {
    expect(told.wasteAvoided.value).toBeCloseTo(told.ifAll.wasted.value - told.ifBought.wasted.value, 6);
    expect(told.wasteAvoided.low).toBeGreaterThan(0);
    expect(worth(told.ifBought)).toBeGreaterThan(worth(told.ifAll));
  });

  it("comes with the plan that the planner makes for what is bought", () => {
    const haul = boughtHaul({ lots }, told);
    const { kitchen, household, from, catalogue } = list;
    expect(told.plan).toEqual(planHaul({ haul, kitchen, household, from, seed: 1, catalogue }));
  });
});

describe("why a thing is cut", () => {
  it("is want of room where room would do", () => {
    const tight = withPlace(withPlace(smallKitchen({ wraps: [] }), "left-drawer", { litres: 1 }), "shelf", {
      litres: 3,
    });
    const told = buyable(asked([lot("head-lettuce", 1600, { pieces: 3 })], tight, { people: 4, days: 7 }));
    expect(thing(told, "head-lettuce").cutBecause).toBe("no room");
  });
  it("is that it goes first where neither room nor appetite would do", () => {
    const told = buyable(asked([lot("raspberry", 2000)], undefined, { people: 1, days: 10 }));
    expect(thing(told, "raspberry").cutBecause).toBe("goes first");
    expect(thing(told, "raspberry").buy.grams).toBeGreaterThan(0);
  });
});

describe("lists at the ends", () => {
  it("that are eaten in time are bought whole", () => {
    const told = buyable(asked([lot("apple", 600), lot("carrot", 400)], undefined, { people: 2, days: 5 }));
    expect(told.things.every(({ cutBecause }) => cutBecause === undefined)).toBe(true);
    expect(told.wasteAvoided.value).toBe(0);
  });
  it("of which nothing may be eaten leave nothing to plan", () => {
    const old = lot("cantaloupe", 800, { form: "cut", extraDays: 9 });
    const told = buyable(asked([old], undefined, { people: 2, days: 5 }));
    expect(told.plan).toBeNull();
    expect(thing(told, "cantaloupe").buy.grams).toBe(0);
    expect(worthBuyingSchema.parse(told)).toEqual(told);
  });
  it("are refused where they cannot be planned, naming the list", () => {
    expect(() => buyable(asked([]))).toThrow(HaulError);
    expect(() => buyable(asked([]))).toThrow(/wished list: it is empty/);
    expect(() => buyable(asked([lot("zorb", 100)]))).toThrow(/zorb/);
    expect(() => buyable(asked([lot("apple", 100)], {}))).toThrow(KitchenError);
    expect(() => buyable(asked([lot("apple", 100)], undefined, { people: 0 }))).toThrow(HouseholdError);
    expect(() => buyable({ ...list, stepGrams: 0 })).toThrow(/step of weight: 0 g/);
    expect(() => buyable({ ...list, from: "soon" })).toThrow(RangeError);
  });
});

describe("any list in any kitchen", () => {
  const size = { lots: [1, 4], places: [1, 4], wraps: [0, 2], days: [2, 9], ripening: 2 } as const;
  it("is never worth less for being cut, and its plan has no fault", () => {
    fc.assert(
      fc.property(fc.nat({ max: 1_000_000 }), (seed) => {
        const { haul, ...rest } = randomRequest(seed, size);
        const told = buyable({ ...rest, wished: haul, stepGrams: 200, seed: 1 });
        for (const { wished, buy } of told.things) expect(buy.grams).toBeLessThanOrEqual(wished.grams);
        const { plan } = told;
        if (plan === null) return;
        const bought = boughtHaul(haul as { lots: { id: string }[] }, told);
        expect(checkPlan({ ...rest, haul: bought, plan })).toEqual([]);
        const all = planHaul({ ...rest, haul, seed: 1 });
        if (all.overflow.length === 0) {
          expect(worth(told.ifBought)).toBeGreaterThanOrEqual(worth(told.ifAll) - 1e-6);
        } else expect(plan.overflow).toEqual([]);
      }),
      { numRuns: 10, seed: 5, endOnFailure: true },
    );
  }, 240_000);
});
