import type { LotOutcome } from "@keepwright/physics";
import { chancePastBest } from "@keepwright/physics";
import { describe, expect, it } from "vitest";
import { eatingHabits, weights } from "../../src/rules/weights.js";
import { gramCost, lifeLostShare, partCosts } from "../../src/schedule/partCosts.js";
import { bound, lot } from "../support.js";

const problem = bound([lot("apple", 600)], undefined, { days: 6 });
const outcome = (changes: Partial<LotOutcome> = {}): LotOutcome => ({
  endDay: 5,
  endedBy: "senescence",
  beyondHorizon: false,
  ripeDay: 0,
  stayStarts: [0],
  daily: [],
  quality: [1, 0.9, 0.8, 0.6, 0.4, 0.2, 0.1],
  ...changes,
});
const costs = (changes: Partial<LotOutcome> = {}, best = 5) =>
  partCosts(problem.lots[0]!, outcome(changes), 0.3, best, problem.household);

describe("partCosts", () => {
  it("mixes portions eaten on time with those eaten late", () => {
    const { lateShare, lateDays } = eatingHabits;
    const life = { median: 5, spread: 0.3 };
    const expected =
      (1 - lateShare) * chancePastBest(life, 2) + lateShare * chancePastBest(life, 2 + lateDays);
    expect(costs().chancePast[2]).toBeCloseTo(expected, 12);
    expect(costs().quality[2]).toBeLessThan(0.8);
  });

  it("forbids days before it is ripe, and never makes a later day cheaper for what only gets worse", () => {
    const list = Array.from(costs({ ripeDay: 1.4 }).costs);
    expect(list.slice(0, 2)).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
    for (let day = 3; day < list.length; day++) expect(list[day]!).toBeGreaterThan(list[day - 1]!);
    expect(costs({ ripeDay: Number.POSITIVE_INFINITY }).readyDay).toBe(Number.POSITIVE_INFINITY);
  });

  it("charges life lost against the best to be had, more for what is left over", () => {
    expect(lifeLostShare(5, 10)).toBe(0.5);
    expect(lifeLostShare(12, 10)).toBe(0);
    const near = costs({}, 5);
    const far = costs({}, 10);
    const { gramsPerPortion } = problem.lots[0]!;
    expect(far.costLeft - near.costLeft).toBeCloseTo(gramsPerPortion * weights.lifeLostLeft * 0.5, 9);
    expect(far.costs[1]! - near.costs[1]!).toBeCloseTo(gramsPerPortion * weights.lifeLostEaten * 0.5, 9);
  });

  it("values a gram wasted at 1, a gram at no quality at its weight, a good one at 0", () => {
    expect(gramCost(1, 0)).toBe(1);
    expect(gramCost(0, 0)).toBe(weights.qualityLost);
    expect(gramCost(0, 1)).toBe(0);
  });
});
