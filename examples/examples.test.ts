import { existsSync, readFileSync } from "node:fs";
import { catalogue } from "@keepwright/catalogue";
import { buyable, checkPlan, judgeArrangement, planHaul, planSchema, readHaul } from "@keepwright/planner";
import { describe, expect, it } from "vitest";
import { example, folder, exampleNames as names } from "./example.js";

describe.each(names)("worked example %s", (name) => {
  const { scenario, kitchen, text, reading, lots, household, haul, request } = example(name);

  it("is invented and says so", () => expect(scenario.invented).toBe(true));

  it("is understood line by line, with at most a question about a word that means several kinds", () => {
    const lines = text.split("\n").filter((line) => line.trim() !== "");
    expect(lots.length).toBeGreaterThanOrEqual(lines.length);
    expect(reading.items.filter((item) => item.kind === "question")).toEqual([]);
  });

  it("is planned without a fault that the independent checker finds, and no worse than unsorted", () => {
    const plan = planHaul(request);
    expect(planSchema.safeParse(plan).success).toBe(true);
    expect(checkPlan({ plan, haul, kitchen, household, catalogue: catalogue() })).toEqual([]);
    expect(plan.overflow).toEqual([]);
    expect(plan.objective.total).toBeLessThanOrEqual(plan.unsorted.objective.total + 1e-6);
  });
});

describe("a haul in Spanish", () => {
  const spanish = names.filter((name) => existsSync(`${folder}${name}/haul.es.txt`));
  it("is there in at least one of the examples", () => expect(spanish.length).toBeGreaterThan(0));

  it.each(spanish)("%s: is understood as the same things, as much of each", (name) => {
    const { lots } = example(name);
    const { items } = readHaul(readFileSync(`${folder}${name}/haul.es.txt`, "utf8"), catalogue());
    const told = items.map((item) => (item.kind === "lot" ? { ...item.lot, typed: "" } : item));
    // The strawberries are in a unit of volume in English, which has no word in Spanish, and as near to it as one weighs.
    expect(told.map((lot) => ({ ...lot, grams: 0 }))).toEqual(
      lots.map(({ id: _, ...lot }) => ({ ...lot, typed: "", grams: 0 })),
    );
    for (const [index, item] of items.entries())
      expect(item.kind === "lot" ? item.lot.grams / lots[index]!.grams : 0).toBeCloseTo(1, 1);
  });
});

const arranged = names.filter((name) => existsSync(`${folder}${name}/arrangement.json`));

describe("an arrangement of somebody's own", () => {
  it("is there in at least one of the examples", () => expect(arranged.length).toBeGreaterThan(0));

  it.each(arranged)("%s: is worse than the plan, and its figures hold", (name) => {
    const { haul, kitchen, household, request } = example(name);
    const arrangement = JSON.parse(readFileSync(`${folder}${name}/arrangement.json`, "utf8"));
    const { yours, wasted, conflicts, findings } = judgeArrangement({ ...request, arrangement });
    const faults = checkPlan({ plan: yours, haul, kitchen, household, catalogue: catalogue() });
    expect(yours.overflow.map(({ place }) => place)).toEqual(
      findings.flatMap((one) => (one.finding === "overfull" ? [one.place] : [])),
    );
    expect(faults).toEqual([]);
    expect(wasted.yours.grams).toBeGreaterThan(2 * wasted.plan.grams);
    expect(conflicts).toHaveLength(3);
  });
});

describe("a wished list", () => {
  const { request } = example("market-saturday");
  const reading = readHaul(readFileSync(`${folder}market-saturday/list.txt`, "utf8"), catalogue());

  it("is understood, and cut to what two people eat in a week", () => {
    expect(reading.items.filter((item) => item.kind === "question")).toEqual([]);
    const lots = reading.items.flatMap((item, index) =>
      item.kind === "lot" ? [{ ...item.lot, id: `lot-${index + 1}` }] : [],
    );
    const { things, wasteAvoided } = buyable({
      ...request,
      household: { people: 2, days: 7 },
      wished: { lots },
    });
    expect(things.some(({ cutBecause }) => cutBecause !== undefined)).toBe(true);
    expect(things.filter(({ buy }) => buy.grams > 0).length).toBeGreaterThan(lots.length / 2);
    expect(wasteAvoided.low).toBeGreaterThan(0);
  }, 120_000);
});
