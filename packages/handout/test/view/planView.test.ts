import { handoutContext, planText, planView } from "@keepwright/handout";
import type { Plan, Reading } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const metric = handoutContext(inventedCatalogue);
const us = handoutContext(inventedCatalogue, { units: "us" });
const view = (plan: Plan = handMadePlan) =>
  planView(metric, plan, { counted: new Map([["b", { grams: 600, pieces: 4 }]]) });

describe("a plan in words", () => {
  it("as text, in metric units", () => {
    expect(planText(metric, view())).toMatchSnapshot();
  });
  it("as text, in US units", () => {
    expect(planText(us, planView(us, handMadePlan))).toMatchSnapshot();
  });

  it("names every lot in a place, in the lives, and once at the start", () => {
    const placed = view()
      .places.flatMap(({ entries }) => entries.map(({ lot }) => lot))
      .sort();
    const all = handMadePlan.lots.map(({ id }) => id).sort();
    expect(placed).toEqual(all);
    expect(
      view()
        .lives.map(({ lot }) => lot)
        .sort(),
    ).toEqual(all);
  });

  it("splits counted pieces between the parts of a lot", () => {
    const amounts = view()
      .places.flatMap(({ entries }) => entries)
      .filter(({ lot }) => lot.startsWith("b"));
    expect(amounts.map(({ amount }) => amount).sort()).toEqual(["1 (about 150 g)", "3 (about 450 g)"]);
  });

  it("gives every portion its day, and says who is away", () => {
    const { days } = view().eating;
    const portions = days.flatMap(({ lots }) => lots).reduce((sum, { portions }) => sum + portions, 0);
    expect(portions).toBe(10);
    expect(days[1]?.line).toMatch(/nobody at home/);
  });

  it("orders moves by date", () => {
    const dates = view().moves.map(({ date }) => date);
    expect(dates).toEqual([...dates].sort());
    expect(dates).toHaveLength(2);
  });

  it("always says to ask the local food-safety authority", () => {
    expect(view().cautions.at(-1)).toMatch(/local food-safety authority/);
  });

  it("says so when the plan wastes no less than unsorted", () => {
    const waste = (here: number, there: number) =>
      view({
        ...handMadePlan,
        expectedWaste: { value: here, unit: "g" },
        unsorted: { ...handMadePlan.unsorted, expectedWaste: { value: there, unit: "g" } },
      }).waste;
    expect(waste(500, 510)).toMatch(/about the same/);
    expect(waste(500, 300)).toMatch(/would be less/);
    const warm = handMadePlan.places.filter(({ placeKind }) => placeKind === "counter");
    expect(view({ ...handMadePlan, places: warm }).waste).toBe("Expected waste with this plan: 120 g.");
    const worse = {
      ...handMadePlan,
      objective: { ...handMadePlan.objective, waste: 900, total: 2000 },
      expectedWaste: { value: 900, unit: "g" as const },
    };
    expect(
      view({ ...worse, unsorted: { ...worse.unsorted, expectedWaste: { value: 500, unit: "g" } } }).waste,
    ).toMatch(/would do better/);
    expect(waste(3, 4)).toMatch(/Next to nothing/);
    expect(waste(3, 400)).toMatch(/^Next to nothing should go to waste with this plan/);
    expect(waste(100, 400)).toMatch(/^Expected waste with this plan: 100/);
  });

  it("shows mark-up and control characters in names as plain characters", () => {
    const places = handMadePlan.places.map((place) => ({ ...place, name: "<b>\u001b[2J" }));
    const text = planText(metric, view({ ...handMadePlan, kitchen: "\u0007{name}", places }));
    expect(text).toContain("<b>\ufffd[2J");
    expect(text).toContain("\ufffd{name}");
    expect(text).not.toContain("\u001b");
  });

  it("speaks of kinds and cautions the catalogue does not know by their bare names", () => {
    const lots = handMadePlan.lots.map((lot) => ({ ...lot, commodity: "star-fruit" }));
    const text = planText(metric, view({ ...handMadePlan, lots, cautions: ["no-such-caution"] }));
    expect(text).toMatch(/Star fruit/);
    expect(text).toMatch(/no-such-caution/);
  });
});

describe("what was understood", () => {
  const reading: Reading = {
    items: [
      {
        kind: "lot",
        typed: "3 dawnfruts",
        from: 0,
        to: 11,
        lot: {
          commodity: "dawnfruit",
          grams: 450,
          pieces: 3,
          form: "whole",
          tops: false,
          washed: false,
          extraDays: 0,
        },
        sure: { commodity: 0.8, amount: 1 },
        assumed: ["spelling", "usual ripeness"],
        questions: [{ ask: "which commodity", word: "dawnfruts", candidates: ["dawnfruit", "pinkcitrus"] }],
      },
      {
        kind: "question",
        typed: "a zorb\u0007",
        from: 12,
        to: 19,
        questions: [{ ask: "what is this", word: "zorb\u0007" }],
      },
      ...(["no amount", "zero", "negative", "too large", "unknown unit", "contradictory"] as const).map(
        (reason) => ({
          kind: "question" as const,
          typed: "x",
          from: 0,
          to: 1,
          questions: [{ ask: "how much" as const, reason, word: "x" }],
        }),
      ),
      {
        kind: "question",
        typed: "rest",
        from: 0,
        to: 4,
        questions: [{ ask: "too many lots", word: "rest" }],
      },
      {
        kind: "question",
        typed: "q",
        from: 0,
        to: 1,
        questions: [{ ask: "which commodity", word: "q", candidates: [] }],
      },
    ],
  };
  it("is told line by line, with assumptions and questions", () => {
    expect(planView(metric, handMadePlan, { reading }).reading).toMatchSnapshot();
  });
});
