import { handoutContext, improvementSource, oneMoveLines, spanishLanguage } from "@keepwright/handout";
import type { BesideDraws, Improvement, Improvements, Judgement, OneMove, Plan } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { besideView } from "../../src/view/besideView.js";
import { inventedCatalogue } from "../fixtures/catalogue.js";
import { handMadePlan } from "../fixtures/plan.js";

const context = handoutContext(inventedCatalogue);
const part = handMadePlan.lots[0]!;

const figure = (low: number, high: number) => ({
  mean: (low + high) / 2,
  standardError: 1,
  median: (low + high) / 2,
  low,
  high,
});
const draws = (yours: readonly [number, number], plan: readonly [number, number]): BesideDraws => ({
  count: 60,
  yours: figure(...yours),
  plan: figure(...plan),
  lost: figure(0, 100),
  savedByMove: figure(120, 480),
});
const judgement = (yours: number, planned: number): Judgement =>
  ({
    yours: handMadePlan,
    plan: handMadePlan,
    wasted: {
      yours: { grams: yours, portions: yours / 80 },
      plan: { grams: planned, portions: planned / 80 },
    },
    lots: [],
  }) as unknown as Judgement;

describe("how things lie beside the plan", () => {
  it("is told in ranges of mass and of portions once they are drawn", () => {
    const { yours, plan, told, how } = besideView(context, judgement(600, 90), draws([410, 830], [0, 160]));
    expect([yours.grams, yours.portions]).toEqual(["410 g to 830 g", "5 to 10 portions"]);
    expect([plan.grams, plan.portions]).toEqual(["up to 160 g", "up to 2 portions"]);
    expect(told).toBe("Waste as you have it: 410 g to 830 g. With the plan: up to 160 g.");
    expect(how).toContain("60 times");
  });
  it("is told by what is expected, as about so much, while no draws are there", () => {
    const { yours, how } = besideView(context, judgement(600, 90), undefined);
    expect(yours.grams).toBe("about 600 g");
    expect(how).toBeUndefined();
  });
  it("is next to nothing where all of it is", () => {
    const { told, yours } = besideView(context, judgement(3, 2), draws([0, 20], [0, 10]));
    expect(told).toContain("Next to nothing");
    expect(yours.portions).toBe("less than a portion");
  });
});

describe("the one move that helps most", () => {
  const saved = { waste: 300, total: 320 } as OneMove["saved"];
  const lot: OneMove = { move: "lot", lot: part.lot, saved };
  it("names the place and the wrap of the plan, and what it saves as a range", () => {
    const [line, gain] = oneMoveLines(context, judgement(600, 90), lot, draws([0, 1], [0, 1]));
    const place = handMadePlan.places.find(({ place }) => place === part.stays[0]!.place)!;
    expect(line).toContain(place.name);
    expect(gain).toBe("Waste falls by 120 g to 480 g in 8 cases of 10.");
  });
  it("says so where hardly any waste is saved, and where no move helps", () => {
    const little: OneMove = { ...lot, saved: { ...saved, waste: 4 } };
    expect(oneMoveLines(context, judgement(9, 9), little, draws([0, 1], [0, 1]))[1]).toContain(
      "hardly changes",
    );
    expect(oneMoveLines(context, judgement(9, 9), undefined, undefined)).toEqual([
      "No single move helps any more.",
    ]);
  });
  it("turns a vent to the plan's setting", () => {
    const place = handMadePlan.places[0]!;
    const vents = [{ place: place.place, setting: "closed" }] as Plan["vents"];
    const turned = { ...judgement(9, 9), plan: { ...handMadePlan, vents } } as Judgement;
    const vent: OneMove = { move: "vent", place: place.place, saved };
    expect(oneMoveLines(context, turned, vent, undefined)).toEqual([`Close the vent of “${place.name}”.`]);
  });
  it("is told in Spanish too", () => {
    const spoken = handoutContext(inventedCatalogue, { language: spanishLanguage });
    const [, gain] = oneMoveLines(spoken, judgement(600, 90), lot, draws([0, 1], [0, 1]));
    expect(gain).toBe("El desperdicio baja entre 120 g y 480 g en 8 de cada 10 casos.");
  });
});

describe("where a saving comes from", () => {
  it("is two plans, and a range made of the planner's noise and of what is not known", () => {
    const one = {
      gain: { value: 200, low: 50, high: 350, unit: "g" },
      plannerNoise: 30,
      modelReach: { below: 140, above: 120 },
    } as Improvement;
    const all = { expectedWaste: { value: 700, unit: "g" } } as Improvements;
    const lines = improvementSource(context, all, one);
    expect(lines[0]).toContain("waste 700 g and 500 g");
    expect(lines[1]).toContain("(30 g)");
    expect(lines[1]).toContain("(140 g)");
  });
});
