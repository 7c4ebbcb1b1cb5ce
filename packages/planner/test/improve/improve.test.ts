import { beforeAll, describe, expect, it } from "vitest";
import { followed } from "../../src/improve/followed.js";
import { improve } from "../../src/improve/improve.js";
import type { Improvements } from "../../src/improve/improvement.js";
import { improvementsSchema } from "../../src/improve/improvement.js";
import { lotsToLeave, mostLotsLeft } from "../../src/improve/lotsToLeave.js";
import { modelReach } from "../../src/improve/modelReach.js";
import { nextToNothing } from "../../src/improve/nextToNothing.js";
import { planned, wasteOf } from "../../src/improve/planned.js";
import { checkedRequest } from "../../src/improve/triedChange.js";
import { HaulError, HouseholdError, KitchenError } from "../../src/problem/inputError.js";
import { planHaul } from "../../src/search/planHaul.js";
import { lot, request, smallKitchen } from "../support.js";

/** Invented: more greens than one person eats in time. */
const greens = request(
  [lot("spinach", 600), lot("romaine", 900), lot("kale", 500), lot("arugula", 300), lot("broccoli", 700)],
  undefined,
  { people: 1, days: 10 },
);
/** Invented: potatoes and onions, which outlast the week wherever they lie. */
const roots = request([lot("potato", 700), lot("onion", 400)], undefined, { people: 3, days: 7 });

const found = ({ changes }: Improvements, name: string) => changes.find(({ change }) => change.name === name);

describe("more greens than are eaten in time", () => {
  let told: Improvements;
  beforeAll(() => {
    told = improve(greens);
  });

  it("are told in the published shape, the largest gain first", () => {
    expect(improvementsSchema.parse(told)).toEqual(told);
    const gains = told.changes.map(({ gain }) => gain.value);
    expect(gains).toEqual([...gains].sort((one, other) => other - one));
  });

  it("gain from a colder refrigerator, more than any noise", () => {
    const colder = found(told, "refrigerator colder")!;
    expect(colder.matters).toBe(true);
    expect(colder.gain.value).toBeGreaterThan(colder.plannerNoise);
    expect(colder.gain.low).toBeGreaterThan(0);
  });

  it("name one lot to leave, and the portion more", () => {
    expect(told.changes.filter(({ change }) => change.name === "lot fewer")).toHaveLength(1);
    expect(found(told, "lot fewer")!.gain.value).toBeGreaterThan(0);
    expect(found(told, "lot fewer")!.eatenLess).toBeDefined();
    expect(found(told, "portion more a day")).toBeDefined();
    expect(found(told, "portion more a day")!.eatenLess).toBeUndefined();
  });

  it("count a change only by the rule, and confirm it with every seed", () => {
    for (const { gain, matters, seeds, plannerNoise, eatenLess } of told.changes) {
      if (seeds.length > 1) expect(seeds).toEqual(told.rule.seeds);
      const worthBuying = eatenLess !== undefined && eatenLess.value > gain.value;
      expect(matters).toBe(gain.value >= nextToNothing && gain.low > 0 && !worthBuying);
      if (matters) expect(seeds).toEqual(told.rule.seeds);
      expect(plannerNoise).toBeGreaterThanOrEqual(told.rule.plannerNoise);
      expect(gain.value - gain.low).toBeGreaterThanOrEqual(plannerNoise - 1e-9);
      expect(gain.high - gain.value).toBeGreaterThanOrEqual(plannerNoise - 1e-9);
    }
  });

  it("save in the terms what the gain says, and the terms add up", () => {
    for (const { gain, saved } of told.changes) {
      expect(saved.waste).toBeCloseTo(gain.value, 6);
      const { waste, qualityLost, lifeLost, effort, overflow, total } = saved;
      expect(waste + qualityLost + lifeLost + effort + overflow).toBeCloseTo(total, 6);
    }
  });

  it("are told the same again for the same seed", () => {
    expect(improve(greens)).toEqual(told);
  });
});

describe("what cannot help", () => {
  it("is not tried where next to nothing is wasted as it is", () => {
    const told = improve(roots);
    expect(planHaul(roots).expectedWaste.value).toBeLessThan(nextToNothing);
    expect(told.changes).toEqual([]);
  });

  it("does not count: boxes with lids for fruit that must breathe", () => {
    const fruit = [lot("banana", 1500, { ripeness: "ripe" }), lot("mango", 900, { ripeness: "ripe" })];
    const told = improve(request(fruit, smallKitchen({ wraps: [] }), { people: 1 }));
    const boxes = found(told, "lidded boxes at hand")!;
    expect(told.expectedWaste.value).toBeGreaterThan(nextToNothing);
    expect(boxes.gain.value).toBe(0);
    expect(boxes.matters).toBe(false);
    expect(boxes.seeds).toHaveLength(1);
  });

  it("does not count: carrots topped in the shop, which the plan tops at home", () => {
    const lots = [lot("carrot", 800, { tops: true }), lot("spinach", 900)];
    const topped = found(improve(request(lots, smallKitchen(), { people: 1 })), "bunches topped")!;
    expect(topped.matters).toBe(false);
    expect(Math.abs(topped.gain.value)).toBeLessThan(nextToNothing);
  });
});

describe("the parts it is made of", () => {
  const base = planned(checkedRequest(greens), 1);

  it("plans as planHaul does", () => {
    expect(base.plan).toEqual(planHaul(greens));
  });

  it("the model's reach is nothing between a plan and itself, and never takes a lot's own waste below nothing", () => {
    expect(modelReach(followed([base]), followed([base]))).toEqual({ below: 0, above: 0 });
    const { haul, ...rest } = checkedRequest(greens);
    const without = planned({ ...rest, haul: { lots: haul.lots.slice(0, 4) } }, 1);
    const reach = modelReach(followed([base]), followed([without]));
    expect(reach.below).toBeGreaterThan(0);
    expect(reach.above).toBeGreaterThan(0);
    expect(wasteOf(base) - wasteOf(without)).toBeGreaterThan(0);
  });

  it("of many lots, those left out are few, and the one of which most is wasted beside what is eaten is among them", () => {
    const kinds = ["spinach", "kale", "arugula", "apple", "potato", "onion", "carrot", "lemon"];
    const large = planned(checkedRequest(request(kinds.map((kind) => lot(kind, 600)))), 1);
    const named = lotsToLeave(large);
    expect(named.size).toBe(mostLotsLeft);
    const most = [...large.plan.lots].sort((a, b) => b.expectedWaste.value - a.expectedWaste.value)[0]!;
    expect(named).toContain(most.lot);
  });
});

describe("what cannot be planned", () => {
  it("is refused as by the planner", () => {
    expect(() => improve(request([]))).toThrow(HaulError);
    expect(() => improve(request([lot("zorb", 100)]))).toThrow(HaulError);
    expect(() => improve(request([lot("apple", 100)], {}))).toThrow(KitchenError);
    expect(() => improve(request([lot("apple", 100)], undefined, { people: 0 }))).toThrow(HouseholdError);
    expect(() => improve({ ...request([lot("apple", 100)]), from: "soon" })).toThrow(RangeError);
  });
});
