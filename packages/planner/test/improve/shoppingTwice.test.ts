import { describe, expect, it } from "vitest";
import { checkPlan } from "../../src/check/index.js";
import { planned } from "../../src/improve/planned.js";
import { shoppingTwice } from "../../src/improve/shoppingTwice.js";
import { checkedRequest } from "../../src/improve/triedChange.js";
import { carriedOn } from "../../src/improve/twice/carried.js";
import { middleDay } from "../../src/improve/twice/middleDay.js";
import { boughtSecond } from "../../src/improve/twice/secondShop.js";
import { shoppedTwice } from "../../src/improve/twice/shoppedTwice.js";
import { householdFrom } from "../../src/problem/checkHousehold.js";
import { lot, request } from "../support.js";

/** Invented: greens and berries for one, more than keep for ten days, and roots that do. */
const greens = checkedRequest(
  request(
    [
      lot("spinach", 600),
      lot("raspberry", 400),
      lot("romaine", 1200, { pieces: 2 }),
      lot("winter-squash", 1000),
    ],
    undefined,
    { people: 1, days: 10 },
  ),
);
const base = planned(greens, 1);

describe("the middle day", () => {
  const middle = (days: number, daysAway: number[] = []) => middleDay(householdFrom({ days, daysAway }));
  it("is the middle of the planned days, or the first day at home after it", () => {
    expect([middle(2), middle(7), middle(10)]).toEqual([1, 4, 5]);
    expect(middle(10, [5, 6])).toBe(7);
  });
  it("is none where nobody eats at home before it or from it on", () => {
    expect(middle(1)).toBeUndefined();
    expect(middle(6, [3, 4, 5])).toBeUndefined();
    expect(middle(6, [0, 1, 2])).toBeUndefined();
  });
});

describe("what is put off", () => {
  const [tried] = shoppingTwice(greens, base);
  it("is what goes soonest, in whole pieces; what keeps is bought once", () => {
    const { change } = tried!;
    if (change.name !== "shopping twice") throw new Error("another change");
    expect(change.day).toBe(5);
    expect(change.lots.map(({ id }) => id)).not.toContain("winter-squash");
    expect(change.lots.map(({ id }) => id)).toContain("spinach");
    for (const { pieces } of change.lots)
      if (pieces !== undefined) expect(Number.isInteger(pieces)).toBe(true);
  });
  it("is never more than there is", () => {
    boughtSecond(base, 5).forEach((portions, index) => {
      const bound = base.prepared.problem.lots[index]!;
      expect(portions).toBeGreaterThanOrEqual(0);
      expect(portions).toBeLessThanOrEqual(bound.portions);
      expect(portions % bound.splitUnit).toBe(0);
    });
  });
  it("saves waste of what goes soon, and its two plans share the haul", () => {
    const { plans, objective } = tried!.withSeed(1);
    expect(objective.waste).toBeLessThan(base.evaluation.objective.waste - 25);
    const [before, after] = plans.map(({ prepared }) => prepared.problem);
    expect([before!.household.days, after!.household.days]).toEqual([5, 5]);
    expect(after!.from).toBe("2026-06-18");
    const eatenBefore = plans[0]!.plan.lots.flatMap(({ eatOn }) => eatOn.map(({ grams }) => grams));
    const rest = after!.lots.map(({ grams }) => grams);
    expect([...eatenBefore, ...rest].reduce((sum, grams) => sum + grams, 0)).toBeCloseTo(3200, 6);
  });
  it("makes a second plan that the checker finds no fault in", () => {
    const { prepared, plan } = tried!.withSeed(1).plans[1]!;
    const { kitchen, household, lots, catalogue } = prepared.problem;
    const haul = { lots: lots.map((one) => one.lot) };
    expect(checkPlan({ plan, haul, kitchen, household, catalogue })).toEqual([]);
  });
  it("is not offered where nothing is gained by waiting", () => {
    const roots = checkedRequest(
      request([lot("potato", 700), lot("onion", 400)], undefined, { people: 3, days: 4 }),
    );
    expect(shoppingTwice(roots, planned(roots, 1))).toEqual([]);
  });
});

describe("what is left of the first plan", () => {
  it("goes on as ripe as it is, and has aged", () => {
    const unripe = lot("avocado", 600, { pieces: 3, ripeness: "unripe" });
    const asked = checkedRequest(request([unripe], undefined, { people: 1, days: 2 }));
    const first = planned(asked, 1);
    const left = carriedOn(first, 2);
    const portions = first.evaluation.eating.left.reduce((sum, one) => sum + one, 0);
    expect(portions).toBeGreaterThan(0);
    for (const one of left) {
      expect(one.ripeness).toBeGreaterThan(0);
      expect(one.extraDays).toBeGreaterThan(0);
    }
  });
  it("has been cut for as long as it has been", () => {
    const cut = lot("cantaloupe", 2000, { form: "cut", extraDays: 1 });
    const asked = checkedRequest(request([cut], undefined, { people: 1, days: 3 }));
    const left = carriedOn(planned(asked, 1), 3);
    expect(left.length).toBeGreaterThan(0);
    for (const one of left) expect(one.extraDays).toBeGreaterThanOrEqual(4);
  });
  it("is not counted as wasted before the second plan has had its turn", () => {
    const late = lot("avocado", 600, { pieces: 3, ripeness: "unripe" });
    const asked = checkedRequest(request([late], undefined, { people: 1, days: 4 }));
    const { plans } = shoppedTwice(asked, { day: 2, first: asked.haul.lots, second: [] }, 1);
    expect(plans[0]!.plan.objective.waste).toBeCloseTo(0, 9);
    expect(plans[1]!.prepared.problem.lots.reduce((sum, { grams }) => sum + grams, 0)).toBeCloseTo(600, 6);
  });
});
